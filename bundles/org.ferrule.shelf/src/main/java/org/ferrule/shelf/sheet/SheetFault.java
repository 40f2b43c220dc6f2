/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.sheet;

/**
 * Something in a sheet that cannot be read.
 *
 * @param row number of the row in the sheet, from 1
 * @param column heading of the column; empty where the whole row is meant
 * @param text what stands there
 * @param expected what was expected, in English
 */
public record SheetFault(int row, String column, String text, String expected) {

    @Override
    public String toString() {
        return "row " + row + (column.isEmpty() ? "" : ", column \"" + column + "\"") + ": \"" + text + "\", expected "
                + expected;
    }
}
