/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Writes documents of pictures as PDF: vector graphics, text that can be selected and searched, fonts embedded. */
package org.ferrule.io.pdf;
