/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.List;
import java.util.Optional;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.layer.ILayer;
import org.eclipse.nebula.widgets.nattable.painter.IOverlayPainter;
import org.eclipse.nebula.widgets.nattable.ui.action.IDragMode;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/**
 * Moves a line while its head is dragged, and with it all that are selected if it is; a bar shows where they would go.
 */
final class LineDrag implements IDragMode, IOverlayPainter {

    private static final int BAR = 4;

    private final MatrixTable matrix;
    private final boolean rows;
    private List<Integer> moving = List.of();
    private int from = -1;
    private int to = -1;

    /**
     * Creates a drag.
     *
     * @param rows whether rows are moved, and not columns
     */
    LineDrag(MatrixTable matrix, boolean rows) {
        this.matrix = matrix;
        this.rows = rows;
    }

    @Override
    public void mouseDown(NatTable table, MouseEvent event) {
        from = position(event);
        to = from;
        moving = from < 0 ? List.of() : matrix.lines().movedWith(matrix.side(rows), from);
        table.addOverlayPainter(this);
    }

    @Override
    public void mouseMove(NatTable table, MouseEvent event) {
        int over = position(event);
        if (over >= 0 && over != to) {
            to = over;
            table.redraw();
        }
    }

    @Override
    public void mouseUp(NatTable table, MouseEvent event) {
        table.removeOverlayPainter(this);
        mouseMove(table, event);
        if (from >= 0 && to >= 0) {
            matrix.lines().move(matrix.side(rows), moving, to, to > from);
        }
        table.redraw();
    }

    private int position(MouseEvent event) {
        return matrix.positionAt(matrix.side(rows), event.x, event.y);
    }

    @Override
    public void paintOverlay(GC gc, ILayer layer) {
        Optional<Rectangle> cell = to < 0 || moving.contains(to) ? Optional.empty()
                : matrix.boundsOf(rows ? to : matrix.firstShown(true), rows ? matrix.firstShown(false) : to);
        cell.ifPresent(bounds -> {
            gc.setBackground(gc.getDevice().getSystemColor(SWT.COLOR_LIST_SELECTION));
            boolean after = to > from;
            if (rows) {
                gc.fillRectangle(0, (after ? bounds.y + bounds.height : bounds.y) - BAR / 2, layer.getWidth(), BAR);
            } else {
                gc.fillRectangle((after ? bounds.x + bounds.width : bounds.x) - BAR / 2, 0, BAR, layer.getHeight());
            }
        });
    }
}
