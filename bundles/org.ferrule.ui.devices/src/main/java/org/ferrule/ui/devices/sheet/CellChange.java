/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import org.eclipse.emf.common.util.Enumerator;

/**
 * Another value for a cell.
 *
 * @param row the row of the cell
 * @param column the column of the cell, which can be edited
 * @param value the value, or null for none
 */
public record CellChange(SheetRow row, SheetColumn column, Object value) {

    /** Tells whether the row states just this already. */
    boolean isNone() {
        boolean states = !column.inherited(row) && !column.text(row).isEmpty();
        return value == null ? !states : states && column.text(row).equals(text());
    }

    /** Returns the text of the value. */
    private String text() {
        return value instanceof Enumerator word ? word.getLiteral() : value.toString();
    }
}
