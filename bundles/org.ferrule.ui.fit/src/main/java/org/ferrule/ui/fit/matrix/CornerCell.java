/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.painter.cell.AbstractCellPainter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/** The corner between the heads: says what is sorted by sums. */
final class CornerCell extends AbstractCellPainter {

    private final MatrixContent content;
    private final CellMeasures measures;

    CornerCell(MatrixContent content, CellMeasures measures) {
        this.content = content;
        this.measures = measures;
    }

    @Override
    public void paintCell(ILayerCell cell, GC gc, Rectangle bounds, IConfigRegistry registry) {
        gc.setBackground(HeadColours.ground(false));
        gc.fillRectangle(bounds);
        gc.setFont(measures.font());
        gc.setForeground(HeadColours.detail());
        int y = bounds.y + bounds.height - CellMeasures.EDGE;
        for (Side side : Side.values()) {
            if (content.sortedBySums(side).isPresent()) {
                y -= measures.line();
                String text = HeadText.shorten(gc, HeadCells.arrow(content.sortedBySums(side).get()) + side.word()
                        + "s by their sums", bounds.width - 2 * CellMeasures.PADDING);
                gc.drawText(text, bounds.x + bounds.width - CellMeasures.PADDING - gc.textExtent(text).x, y,
                        SWT.DRAW_TRANSPARENT);
            }
        }
    }

    @Override
    public int getPreferredWidth(ILayerCell cell, GC gc, IConfigRegistry registry) {
        return measures.cellWidth();
    }

    @Override
    public int getPreferredHeight(ILayerCell cell, GC gc, IConfigRegistry registry) {
        return measures.columnHeadRoom();
    }
}
