/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.IntSupplier;

import org.eclipse.nebula.widgets.nattable.data.IDataProvider;
import org.ferrule.ui.devices.sheet.Listing;
import org.ferrule.ui.devices.sheet.SheetColumn;

/**
 * The texts of one region of the table.
 *
 * @param columns how many columns there are
 * @param rows how many rows there are
 * @param values the value by column and row
 */
record GridData(IntSupplier columns, IntSupplier rows, BiFunction<Integer, Integer, Object> values)
        implements
            IDataProvider {

    static GridData cells(Listing listing, List<SheetColumn> columns) {
        return new GridData(columns::size, () -> listing.lines().size(), (column, row) -> listing.lines().get(row).row()
                .map(columns.get(column)::text).orElse(""));
    }

    static GridData columnHeads(List<SheetColumn> columns) {
        return new GridData(columns::size, () -> 1, (column, row) -> columns.get(column).title());
    }

    static GridData rowHeads(Listing listing) {
        return new GridData(() -> 1, () -> listing.lines().size(), (column, row) -> "");
    }

    static GridData corner() {
        return new GridData(() -> 1, () -> 1, (column, row) -> "");
    }

    @Override
    public int getColumnCount() {
        return columns.getAsInt();
    }

    @Override
    public int getRowCount() {
        return rows.getAsInt();
    }

    @Override
    public Object getDataValue(int column, int row) {
        return row < getRowCount() ? values.apply(column, row) : "";
    }

    @Override
    public void setDataValue(int column, int row, Object value) {
        throw new UnsupportedOperationException("cells are changed by commands");
    }
}
