/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.function.IntSupplier;

import org.eclipse.nebula.widgets.nattable.data.IDataProvider;

/** Gives the table what stands where: the answers, the heads of a side, or nothing in the corner. Nothing is set. */
final class MatrixData {

    /** Finds a value. */
    @FunctionalInterface
    private interface Values {
        Object at(int column, int row);
    }

    private MatrixData() {
    }

    static IDataProvider answers(MatrixContent content) {
        return provider(() -> content.columns().size(), () -> content.rows().size(),
                (column, row) -> content.value(row, column));
    }

    /** The heads of the rows, and beside them their sums where these are shown. */
    static IDataProvider rowHeads(MatrixContent content) {
        return provider(() -> depth(content), () -> content.rows().size(),
                (column, row) -> head(content, content.rowSide(), row, column));
    }

    /** The heads of the columns, and below them their sums where these are shown. */
    static IDataProvider columnHeads(MatrixContent content) {
        return provider(() -> content.columns().size(), () -> depth(content),
                (column, row) -> head(content, content.rowSide().other(), column, row));
    }

    private static int depth(MatrixContent content) {
        return content.sums().shown() ? 2 : 1;
    }

    private static Object head(MatrixContent content, Side side, int position, int depth) {
        return depth == 0 ? content.axis(side).line(position) : content.sums().of(side, position);
    }

    static IDataProvider corner() {
        return provider(() -> 1, () -> 1, (column, row) -> null);
    }

    private static IDataProvider provider(IntSupplier columns, IntSupplier rows, Values values) {
        return new IDataProvider() {
            @Override
            public Object getDataValue(int column, int row) {
                boolean there = column >= 0 && row >= 0 && column < getColumnCount() && row < getRowCount();
                return there ? values.at(column, row) : null;
            }

            @Override
            public void setDataValue(int column, int row, Object value) {
                throw new UnsupportedOperationException("answers are worked out, not set");
            }

            @Override
            public int getColumnCount() {
                return columns.getAsInt();
            }

            @Override
            public int getRowCount() {
                return rows.getAsInt();
            }
        };
    }
}
