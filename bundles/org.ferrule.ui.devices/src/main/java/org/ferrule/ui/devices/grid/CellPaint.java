/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.List;
import java.util.function.IntSupplier;

import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.painter.cell.AbstractCellPainter;
import org.eclipse.nebula.widgets.nattable.style.SelectionStyleLabels;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.ui.devices.sheet.Listing;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetLine;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.devices.sheet.Trait;
import org.ferrule.ui.look.Colours;

/** Paints cells: what is inherited stands back and is slanted; what cannot be read bears a sign. */
final class CellPaint extends AbstractCellPainter {

    static final int PAD = 6;
    private static final int ARROW = 4;
    private static final int WIDE = 4000;

    private final Listing listing;
    private final List<SheetColumn> columns;
    private final Drafts drafts;
    private final GridText text;
    private final IntSupplier left;

    /**
     * Creates a painter.
     *
     * @param left where cells begin, to the right of the heads
     */
    CellPaint(Listing listing, List<SheetColumn> columns, Drafts drafts, GridText text, IntSupplier left) {
        this.listing = listing;
        this.columns = columns;
        this.drafts = drafts;
        this.text = text;
        this.left = left;
    }

    @Override
    public void paintCell(ILayerCell cell, GC gc, Rectangle bounds, IConfigRegistry registry) {
        if (cell.getRowIndex() >= listing.lines().size()) {
            return;
        }
        boolean selected = cell.getDisplayMode().equals(DisplayMode.SELECT);
        SheetLine line = listing.lines().get(cell.getRowIndex());
        if (line instanceof SheetLine.Head head) {
            head(gc, bounds, head, selected);
        } else if (line instanceof SheetLine.Of row) {
            gc.setBackground(selected ? GridColours.selected() : Colours.paper());
            gc.fillRectangle(bounds);
            value(gc, bounds, row.value(), columns.get(cell.getColumnIndex()));
        }
        if (cell.getConfigLabels().hasLabel(SelectionStyleLabels.SELECTION_ANCHOR_STYLE)) {
            gc.setForeground(Colours.selection());
            gc.drawRectangle(bounds.x, bounds.y, bounds.width - 1, bounds.height - 1);
        }
    }

    private void value(GC gc, Rectangle bounds, SheetRow row, SheetColumn column) {
        Rectangle area = new Rectangle(bounds.x + PAD, bounds.y, bounds.width - 2 * PAD, bounds.height);
        String draft = drafts.get(row, column).orElse(null);
        boolean muted = draft == null && column.inherited(row);
        gc.setFont(muted ? GridText.italic() : GridText.font());
        gc.setForeground(draft != null ? Colours.error() : muted ? Colours.muted() : Colours.text());
        if (draft != null) {
            Image sign = FieldDecorationRegistry.getDefault()
                    .getFieldDecoration(FieldDecorationRegistry.DEC_ERROR).getImage();
            gc.drawImage(sign, bounds.x + 1, bounds.y + 2);
            area.x += sign.getBounds().width;
            area.width -= sign.getBounds().width;
        }
        text.draw(gc, area, draft == null ? column.text(row) : draft);
    }

    /** Every cell shows its part of one text that runs over all of them, and over the lines between them. */
    private void head(GC gc, Rectangle bounds, SheetLine.Head head, boolean selected) {
        Rectangle clipping = gc.getClipping();
        if (clipping.x == bounds.x && bounds.x > left.getAsInt()) {
            gc.setClipping(bounds.x - 1, clipping.y, clipping.width + 1, clipping.height);
        }
        headPart(gc, bounds, head, selected);
        gc.setClipping(clipping);
    }

    private void headPart(GC gc, Rectangle bounds, SheetLine.Head head, boolean selected) {
        gc.setBackground(selected ? GridColours.selected() : GridColours.group());
        gc.fillRectangle(bounds.x - 1, bounds.y, bounds.width + 1, bounds.height);
        int x = left.getAsInt() + PAD;
        int y = bounds.y + bounds.height / 2;
        gc.setBackground(Colours.text());
        gc.fillPolygon(head.folded() ? new int[] { x, y - ARROW, x + ARROW + 1, y, x, y + ARROW }
                : new int[] { x - 1, y - 2, x + 2 * ARROW - 1, y - 2, x + ARROW - 1, y + ARROW - 1 });
        gc.setForeground(Colours.text());
        gc.setFont(GridText.bold());
        text.draw(gc, new Rectangle(x + 3 * ARROW, bounds.y, WIDE, bounds.height),
                Trait.words(head.value()) + "  (" + head.count() + ")");
    }

    @Override
    public int getPreferredWidth(ILayerCell cell, GC gc, IConfigRegistry registry) {
        gc.setFont(GridText.font());
        return gc.textExtent(String.valueOf(cell.getDataValue())).x + 3 * PAD;
    }

    @Override
    public int getPreferredHeight(ILayerCell cell, GC gc, IConfigRegistry registry) {
        return cell.getBounds().height;
    }
}
