/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.List;

import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.painter.cell.AbstractCellPainter;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.ui.devices.sheet.Listing;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.look.Colours;

/** Paints the heads of columns, with a sign on the one that the rows are sorted by. */
final class HeadPaint extends AbstractCellPainter {

    private static final int ARROW = 4;

    private final Listing listing;
    private final List<SheetColumn> columns;
    private final GridText text;

    HeadPaint(Listing listing, List<SheetColumn> columns, GridText text) {
        this.listing = listing;
        this.columns = columns;
        this.text = text;
    }

    @Override
    public void paintCell(ILayerCell cell, GC gc, Rectangle bounds, IConfigRegistry registry) {
        SheetColumn column = columns.get(cell.getColumnIndex());
        boolean sorted = listing.sorted().filter(column::equals).isPresent();
        gc.setBackground(GridColours.head());
        gc.fillRectangle(bounds);
        gc.setFont(sorted ? GridText.bold() : GridText.font());
        gc.setForeground(Colours.text());
        int room = sorted ? 3 * ARROW : 0;
        text.draw(gc, new Rectangle(bounds.x + CellPaint.PAD, bounds.y, bounds.width - 2 * CellPaint.PAD - room,
                bounds.height), column.title());
        if (sorted) {
            int x = bounds.x + bounds.width - CellPaint.PAD - 2 * ARROW;
            int y = bounds.y + bounds.height / 2;
            int base = listing.rising() ? y + 2 : y - 2;
            int tip = listing.rising() ? y - 3 : y + 3;
            gc.setBackground(Colours.text());
            gc.fillPolygon(new int[] { x, base, x + 2 * ARROW, base, x + ARROW, tip });
        }
    }

    @Override
    public int getPreferredWidth(ILayerCell cell, GC gc, IConfigRegistry registry) {
        gc.setFont(GridText.bold());
        return gc.textExtent(columns.get(cell.getColumnIndex()).title()).x + 2 * CellPaint.PAD + 3 * ARROW;
    }

    @Override
    public int getPreferredHeight(ILayerCell cell, GC gc, IConfigRegistry registry) {
        return cell.getBounds().height;
    }
}
