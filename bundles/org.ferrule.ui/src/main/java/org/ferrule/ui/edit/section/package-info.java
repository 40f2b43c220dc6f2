/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Sections of pages on which the parts of a document are stated, edited and left out, with lists and tables. */
package org.ferrule.ui.edit.section;
