/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.look;

import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** Gives the columns of a table the whole width of it, so that none is cut off beside an empty one. */
public final class ColumnRoom {

    private static final int ROUND_HEAD = 14;
    /** Heads are set in bold letters, which a table does not tell. */
    private static final double BOLD = 1.1;

    private ColumnRoom() {
    }

    /**
     * Shares out what room the columns leave, now and whenever the table gets another size. None becomes narrower than it
     * is now, or than its head; where that is too much for the table, it scrolls.
     */
    public static void share(Table table) {
        int[] least = Stream.of(table.getColumns()).mapToInt(column -> Math.max(column.getWidth(), head(table, column)))
                .toArray();
        table.addListener(SWT.Resize, event -> share(table, least));
        share(table, least);
    }

    private static int head(Table table, TableColumn column) {
        GC gc = new GC(table);
        try {
            return (int) Math.ceil(BOLD * gc.textExtent(column.getText()).x) + ROUND_HEAD;
        } finally {
            gc.dispose();
        }
    }

    private static void share(Table table, int[] least) {
        int needed = IntStream.of(least).sum();
        int room = Math.max(needed, table.getClientArea().width);
        int left = room;
        for (int i = 0; i < least.length; i++) {
            int width = i == least.length - 1 ? left : (int) ((long) room * least[i] / needed);
            table.getColumn(i).setWidth(width);
            left -= width;
        }
    }
}
