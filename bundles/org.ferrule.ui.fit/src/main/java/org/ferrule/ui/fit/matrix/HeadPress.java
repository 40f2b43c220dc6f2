/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.ui.action.IMouseAction;
import org.eclipse.nebula.widgets.nattable.viewport.action.ViewportSelectColumnAction;
import org.eclipse.nebula.widgets.nattable.viewport.action.ViewportSelectRowAction;
import org.eclipse.swt.events.MouseEvent;

/** A press on a head selects its line, but leaves several lines selected of which it is one: they may be dragged next. */
final class HeadPress implements IMouseAction {

    private final MatrixTable matrix;
    private final boolean rows;
    private final IMouseAction select;

    /**
     * Creates the action.
     *
     * @param rows whether it is for the heads of rows, and not of columns
     */
    HeadPress(MatrixTable matrix, boolean rows) {
        this.matrix = matrix;
        this.rows = rows;
        select = rows ? new ViewportSelectRowAction(false, false) : new ViewportSelectColumnAction(false, false);
    }

    @Override
    public void run(NatTable table, MouseEvent event) {
        Side side = matrix.side(rows);
        int position = matrix.positionAt(side, event.x, event.y);
        if (position < 0 || matrix.lines().movedWith(side, position).size() == 1) {
            select.run(table, event);
        }
    }
}
