/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

/**
 * A cell.
 *
 * @param row its row
 * @param column its column
 */
public record CellPlace(SheetRow row, SheetColumn column) {
}
