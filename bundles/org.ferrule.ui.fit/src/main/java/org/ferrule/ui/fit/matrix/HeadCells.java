/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.painter.cell.AbstractCellPainter;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;

/** Paints the heads of rows or of columns, and of their groups. */
final class HeadCells extends AbstractCellPainter {

    private static final int PAD = CellMeasures.PADDING;

    private final boolean rows;
    private final MatrixContent content;
    private final CellMeasures measures;
    private final Supplier<Rectangle> visible;
    private final SumPainter sums;
    private final Predicate<ILayerCell> isSum;

    /**
     * Creates a painter.
     *
     * @param rows whether they are heads of rows, and not of columns
     * @param sums paints the sums of lines
     * @param isSum tells of a cell of the table whether it is the sum of a line
     * @param visible the part of the table in which cells scroll
     */
    HeadCells(boolean rows, MatrixContent content, CellMeasures measures, SumPainter sums,
            Predicate<ILayerCell> isSum, Supplier<Rectangle> visible) {
        this.isSum = isSum;
        this.sums = sums;
        this.visible = visible;
        this.rows = rows;
        this.content = content;
        this.measures = measures;
    }

    @Override
    public void paintCell(ILayerCell cell, GC gc, Rectangle bounds, IConfigRegistry registry) {
        boolean selected = cell.getDisplayMode().equals(DisplayMode.SELECT);
        gc.setBackground(HeadColours.ground(selected));
        gc.fillRectangle(bounds);
        if (isSum.test(cell)) {
            sums.paint(gc, bounds, content.sums().of(side(), rows ? cell.getRowIndex() : cell.getColumnIndex()));
        } else if (cell.getDataValue() instanceof MatrixLine line) {
            line(gc, bounds, line);
        } else if (cell.getDataValue() != null) {
            group(gc, seen(bounds), named(String.valueOf(cell.getDataValue())));
        }
    }

    /** With a sign that tells whether the group is folded. */
    private String named(String group) {
        MatrixAxis axis = rows ? content.rows() : content.columns();
        return (axis.folded().contains(group) ? "\u25b8 " : "\u25be ") + group;
    }

    private void line(GC gc, Rectangle bounds, MatrixLine line) {
        boolean turned = !rows && measures.turnsHeads();
        if (turned) {
            turned(gc, bounds, area -> oneLine(gc, area, line));
        } else if (!rows) {
            wrapped(gc, bounds, line);
        } else if (measures.turnsHeads()) {
            oneLine(gc, bounds, line);
        } else {
            twoLines(gc, bounds, line);
        }
    }

    /** Name and figure one below the other. */
    private void twoLines(GC gc, Rectangle area, MatrixLine line) {
        int width = area.width - 2 * PAD;
        gc.setFont(measures.font());
        gc.setForeground(HeadColours.text());
        gc.drawText(HeadText.shorten(gc, title(line), width), area.x + PAD, area.y + CellMeasures.EDGE,
                SWT.DRAW_TRANSPARENT);
        gc.setForeground(HeadColours.detail());
        gc.drawText(HeadText.shorten(gc, line.detail(), width), area.x + PAD,
                area.y + CellMeasures.EDGE + measures.line(), SWT.DRAW_TRANSPARENT);
    }

    /** Name and figure side by side; the name gives way. */
    private void oneLine(GC gc, Rectangle area, MatrixLine line) {
        gc.setFont(measures.font());
        int detail = gc.textExtent(line.head().figure()).x;
        int y = area.y + (area.height - measures.line()) / 2;
        gc.setForeground(HeadColours.detail());
        gc.drawText(line.head().figure(), area.x + area.width - PAD - detail, y, SWT.DRAW_TRANSPARENT);
        gc.setForeground(HeadColours.text());
        gc.drawText(HeadText.shorten(gc, title(line), area.width - detail - 4 * PAD), area.x + PAD, y,
                SWT.DRAW_TRANSPARENT);
    }

    /** The name over several lines, the figure below. */
    private void wrapped(GC gc, Rectangle area, MatrixLine line) {
        int width = area.width - 2 * PAD;
        int most = (area.height - 2 * PAD + 2) / measures.line() - 1;
        gc.setFont(measures.font());
        gc.setForeground(HeadColours.text());
        int y = area.y + PAD;
        for (String part : HeadText.wrap(gc, title(line), width, most)) {
            gc.drawText(part, area.x + PAD, y, SWT.DRAW_TRANSPARENT);
            y += measures.line();
        }
        gc.setForeground(HeadColours.detail());
        gc.drawText(HeadText.shorten(gc, line.detail(), width), area.x + PAD,
                area.y + area.height - PAD - measures.line(), SWT.DRAW_TRANSPARENT);
    }

    /** The part of a group's head that is not scrolled off: there its name can be read. */
    private Rectangle seen(Rectangle bounds) {
        Rectangle room = visible.get();
        Rectangle lines = rows ? new Rectangle(bounds.x, room.y, bounds.width, room.height)
                : new Rectangle(room.x, bounds.y, room.width, bounds.height);
        return bounds.intersection(lines);
    }

    private void group(GC gc, Rectangle bounds, String name) {
        gc.setForeground(HeadColours.text());
        gc.setFont(measures.bold());
        if (rows) {
            turned(gc, bounds, area -> group(gc, area, name, true));
        } else {
            group(gc, bounds, name, false);
        }
    }

    private void group(GC gc, Rectangle area, String name, boolean fromEnd) {
        String text = HeadText.shorten(gc, name, area.width - 2 * PAD);
        int x = fromEnd ? area.x + area.width - PAD - gc.textExtent(text).x : area.x + PAD;
        gc.drawText(text, x, area.y + (area.height - measures.line()) / 2, SWT.DRAW_TRANSPARENT);
    }

    private Side side() {
        return rows ? content.rowSide() : content.rowSide().other();
    }

    private String title(MatrixLine line) {
        Side side = side();
        String pin = content.axis(side).isPinned(line.key()) ? "\u2302 " : "";
        return pin + content.sort().filter(sort -> sort.by() == side && sort.key().equals(line.key()))
                .map(sort -> arrow(sort.bestFirst())).orElse("") + line.head().title();
    }

    static String arrow(boolean bestFirst) {
        return bestFirst ? "\u25bc " : "\u25b2 ";
    }

    /** Turns the graphics so that text runs upward; the area is given as it lies then. */
    private static void turned(GC gc, Rectangle bounds, Consumer<Rectangle> drawing) {
        Transform before = new Transform(gc.getDevice());
        gc.getTransform(before);
        Transform turned = new Transform(gc.getDevice());
        gc.getTransform(turned);
        turned.translate(bounds.x, bounds.y + bounds.height);
        turned.rotate(-90);
        gc.setTransform(turned);
        drawing.accept(new Rectangle(0, 0, bounds.height, bounds.width));
        gc.setTransform(before);
        turned.dispose();
        before.dispose();
    }

    @Override
    public int getPreferredWidth(ILayerCell cell, GC gc, IConfigRegistry registry) {
        return measures.cellWidth();
    }

    @Override
    public int getPreferredHeight(ILayerCell cell, GC gc, IConfigRegistry registry) {
        return rows ? measures.cellHeight() : measures.columnHeadRoom();
    }
}
