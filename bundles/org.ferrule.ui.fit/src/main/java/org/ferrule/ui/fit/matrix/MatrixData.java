/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

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
        return provider(content.axis(Side.INNER), content.axis(Side.OUTER),
                (column, row) -> content.cell(row, column));
    }

    static IDataProvider heads(MatrixContent content, Side side) {
        MatrixAxis axis = content.axis(side);
        return side == Side.OUTER ? provider(null, axis, (column, row) -> axis.line(row))
                : provider(axis, null, (column, row) -> axis.line(column));
    }

    static IDataProvider corner() {
        return provider(null, null, (column, row) -> null);
    }

    private static IDataProvider provider(MatrixAxis columns, MatrixAxis rows, Values values) {
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
                return columns == null ? 1 : columns.size();
            }

            @Override
            public int getRowCount() {
                return rows == null ? 1 : rows.size();
            }
        };
    }
}
