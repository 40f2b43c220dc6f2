/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Optional;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;
import org.eclipse.swt.graphics.Rectangle;

/** Paints those cells anew that have just changed and can be seen, and no others. */
final class MatrixRepaint {

    private final NatTable table;
    private final ViewportLayer viewport;
    private final CellStates states;

    MatrixRepaint(NatTable table, ViewportLayer viewport, CellStates states) {
        this.table = table;
        this.viewport = viewport;
        this.states = states;
    }

    void run() {
        if (table.isDisposed() || states.changed().isEmpty()) {
            return;
        }
        for (int row = first(viewport.getOriginRowPosition()); row < lastRow(); row++) {
            for (int column = first(viewport.getOriginColumnPosition()); column < lastColumn(); column++) {
                if (states.justChanged(column, row)) {
                    bounds(table, viewport, row, column)
                            .ifPresent(b -> table.redraw(b.x, b.y, b.width, b.height, false));
                }
            }
        }
    }

    private static int first(int origin) {
        return Math.max(0, origin);
    }

    private int lastRow() {
        return viewport.getOriginRowPosition() + viewport.getRowCount();
    }

    private int lastColumn() {
        return viewport.getOriginColumnPosition() + viewport.getColumnCount();
    }

    /** Where a cell is painted; nothing if it is scrolled off. */
    static Optional<Rectangle> bounds(NatTable table, ViewportLayer viewport, int row, int column) {
        int viewRow = row - viewport.getOriginRowPosition();
        int viewColumn = column - viewport.getOriginColumnPosition();
        boolean visible = viewRow >= 0 && viewColumn >= 0 && viewRow < viewport.getRowCount()
                && viewColumn < viewport.getColumnCount();
        return visible ? Optional.ofNullable(table.getBoundsByPosition(
                viewColumn + table.getColumnCount() - viewport.getColumnCount(),
                viewRow + table.getRowCount() - viewport.getRowCount())) : Optional.empty();
    }
}
