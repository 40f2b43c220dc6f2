/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * The editing kit: {@link org.ferrule.ui.edit.DocumentEditor} for editors of documents, made of
 * {@link org.ferrule.ui.edit.DocumentPage}s, with undo, saving, and questions about changes by other programs.
 */
package org.ferrule.ui.edit;
