/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Cells of the table as text with tabs between, to and from a spreadsheet. */
package org.ferrule.ui.devices.clip;
