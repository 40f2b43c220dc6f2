/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Documents in the workspace. {@link org.ferrule.ui.document.DocumentRecords} answers what a file says now, on any
 * thread; {@link org.ferrule.ui.document.DocumentSession} is a document that is being edited, one per file, shared by
 * all of its editors and used on the display's thread only.
 */
package org.ferrule.ui.document;
