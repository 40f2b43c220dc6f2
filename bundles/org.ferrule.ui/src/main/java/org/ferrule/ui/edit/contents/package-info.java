/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** A page that shows what a document holds as a tree, and beside it the fields of what is chosen there. */
package org.ferrule.ui.edit.contents;
