/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ready;

import org.eclipse.jface.viewers.FocusCellHighlighter;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;

/** A frame round the cell to which the arrow keys have led; the row that is selected is painted as everywhere else. */
final class CellFrame extends FocusCellHighlighter {

    private final TableViewer viewer;

    CellFrame(TableViewer viewer) {
        super(viewer);
        this.viewer = viewer;
        viewer.getTable().addListener(SWT.PaintItem, this::paint);
    }

    private void paint(Event event) {
        ViewerCell cell = getFocusCell();
        if (cell != null && cell.getItem() == event.item && cell.getColumnIndex() == event.index) {
            Rectangle bounds = cell.getBounds();
            event.gc.setForeground(viewer.getTable().getForeground());
            event.gc.setLineWidth(1);
            event.gc.drawRectangle(bounds.x, bounds.y, bounds.width - 1, bounds.height - 1);
        }
    }

    @Override
    protected void focusCellChanged(ViewerCell now, ViewerCell before) {
        viewer.getTable().redraw();
    }
}
