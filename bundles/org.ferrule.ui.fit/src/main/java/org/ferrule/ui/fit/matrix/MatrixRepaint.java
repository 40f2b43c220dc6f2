/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import org.eclipse.nebula.widgets.nattable.NatTable;

/** Paints those cells anew that have just changed and can be seen, and no others. */
final class MatrixRepaint {

    private final NatTable table;
    private final ShownCells shown;
    private final CellStates states;

    MatrixRepaint(NatTable table, ShownCells shown, CellStates states) {
        this.table = table;
        this.shown = shown;
        this.states = states;
    }

    void run() {
        if (table.isDisposed() || states.changed().isEmpty()) {
            return;
        }
        shown.rows().forEach(row -> shown.columns().filter(column -> states.justChanged(column, row))
                .forEach(column -> shown.bounds(row, column)
                        .ifPresent(b -> table.redraw(b.x, b.y, b.width, b.height, false))));
    }
}
