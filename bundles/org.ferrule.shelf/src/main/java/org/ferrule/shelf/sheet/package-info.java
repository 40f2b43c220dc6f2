/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** A shelf as a sheet of rows: what a format is, what can be wrong in a sheet, and what it would change. */
package org.ferrule.shelf.sheet;
