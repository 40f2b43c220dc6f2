/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.List;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.graphics.FontMetrics;
import org.eclipse.swt.graphics.GC;
import org.ferrule.ui.devices.sheet.SheetColumn;

/** Which columns of the table are shown, in which order, and how wide; all of it is remembered. */
public final class GridColumns {

    private static final int ROW_ROOM = 9;

    private final GridLayers layers;
    private final List<SheetColumn> columns;
    private final NatTable table;
    private final GridMemory memory;

    GridColumns(GridLayers layers, List<SheetColumn> columns, NatTable table, String name) {
        this.layers = layers;
        this.columns = columns;
        this.table = table;
        memory = new GridMemory(layers, columns, this::measure, name);
    }

    private void measure() {
        GC gc = new GC(table);
        try {
            gc.setFont(GridText.font());
            FontMetrics metrics = gc.getFontMetrics();
            layers.measure(metrics.getHeight() + ROW_ROOM, metrics.getAverageCharacterWidth());
        } finally {
            gc.dispose();
        }
    }

    void connect() {
        memory.connect();
    }

    /** Tells whether a column is shown. */
    public boolean isShown(SheetColumn column) {
        return !layers.hiding().isColumnIndexHidden(columns.indexOf(column));
    }

    /** Shows a column, or hides it. */
    public void show(SheetColumn column, boolean shown) {
        if (shown) {
            layers.hiding().showColumnIndexes(columns.indexOf(column));
        } else {
            layers.hiding().hideColumnIndexes(columns.indexOf(column));
        }
    }

    /** Moves a column to the other side of its neighbour that is shown, to the left (-1) or to the right (1). */
    public void move(SheetColumn column, int by) {
        List<Integer> order = layers.order().getColumnIndexOrder();
        int from = order.indexOf(columns.indexOf(column));
        int to = from + by;
        while (to >= 0 && to < order.size() && layers.hiding().isColumnIndexHidden(order.get(to))) {
            to += by;
        }
        if (to >= 0 && to < order.size()) {
            layers.order().reorderColumnPosition(from, by < 0 ? to : to + 1);
        }
    }

    /** Brings all columns back into their first order and widths. */
    public void reset() {
        memory.reset();
        table.refresh();
    }
}
