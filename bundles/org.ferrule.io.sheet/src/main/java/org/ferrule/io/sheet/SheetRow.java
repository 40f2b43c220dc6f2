/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.sheet;

import java.util.List;

/**
 * A row of a sheet as texts; dates in ISO 8601, numbers with a decimal point.
 *
 * @param number its number in the sheet, from 1
 * @param cells its cells from the first column; empty where nothing stands
 */
record SheetRow(int number, List<String> cells) {

    String cell(int place) {
        return place < cells.size() ? cells.get(place).strip() : "";
    }

    boolean isBlank() {
        return cells.stream().allMatch(String::isBlank);
    }
}
