/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** How documents are saved, and how changes by other programs are noticed. */
package org.ferrule.ui.internal.document;
