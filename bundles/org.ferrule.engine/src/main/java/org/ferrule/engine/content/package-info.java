/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** What a solved chart shows on paper. */
package org.ferrule.engine.content;
