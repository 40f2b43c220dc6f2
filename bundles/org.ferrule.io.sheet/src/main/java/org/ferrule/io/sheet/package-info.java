/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * A shelf as a spreadsheet, CSV or XLSX: a row for each lot, an item without lots as a row of its own. What is written
 * is read back as the same shelf.
 */
package org.ferrule.io.sheet;
