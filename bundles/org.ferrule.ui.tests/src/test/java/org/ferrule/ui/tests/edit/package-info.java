/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Editing: fields, undo, saving, changes by other programs, broken and read-only documents. */
package org.ferrule.ui.tests.edit;
