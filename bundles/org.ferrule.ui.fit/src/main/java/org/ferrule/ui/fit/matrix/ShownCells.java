/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.freeze.FreezeLayer;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;
import org.eclipse.swt.graphics.Rectangle;

/** Which cells can be seen, and where: pinned ones, and those that are not scrolled off. */
final class ShownCells {

    private final NatTable table;
    private final ViewportLayer viewport;
    private final FreezeLayer pinned;

    ShownCells(NatTable table, ViewportLayer viewport, FreezeLayer pinned) {
        this.table = table;
        this.viewport = viewport;
        this.pinned = pinned;
    }

    /** How many columns of the widget are heads. */
    int headColumns() {
        return table.getColumnCount() - viewport.getColumnCount() - pinned.getColumnCount();
    }

    /** How many rows of the widget are heads. */
    int headRows() {
        return table.getRowCount() - viewport.getRowCount() - pinned.getRowCount();
    }

    /** The positions of the rows that can be seen. */
    IntStream rows() {
        int first = Math.max(pinned.getRowCount(), viewport.getOriginRowPosition());
        return IntStream.concat(IntStream.range(0, pinned.getRowCount()),
                IntStream.range(first, viewport.getOriginRowPosition() + viewport.getRowCount()));
    }

    /** The positions of the columns that can be seen. */
    IntStream columns() {
        int first = Math.max(pinned.getColumnCount(), viewport.getOriginColumnPosition());
        return IntStream.concat(IntStream.range(0, pinned.getColumnCount()),
                IntStream.range(first, viewport.getOriginColumnPosition() + viewport.getColumnCount()));
    }

    /** Where a cell is painted; nothing if it is scrolled off. */
    Optional<Rectangle> bounds(int row, int column) {
        int viewRow = view(row, pinned.getRowCount(), viewport.getOriginRowPosition(), viewport.getRowCount());
        int viewColumn = view(column, pinned.getColumnCount(), viewport.getOriginColumnPosition(),
                viewport.getColumnCount());
        return viewRow < 0 || viewColumn < 0 ? Optional.empty()
                : Optional.ofNullable(table.getBoundsByPosition(viewColumn + headColumns(), viewRow + headRows()));
    }

    private static int view(int position, int pinned, int origin, int count) {
        if (position < pinned) {
            return position;
        }
        return position >= origin && position < origin + count ? position - origin + pinned : -1;
    }
}
