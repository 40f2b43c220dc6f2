/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.painter.cell.AbstractCellPainter;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.SideMark;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.picture.PicturePainting;

/** Paints the cells of the matrix: verdict by shape, word and colour, worst clearance, and marks. */
final class VerdictCells extends AbstractCellPainter {

    private static final int SELECTION_WIDTH = 3;
    private static final int CHANGE_WIDTH = 2;

    private final MatrixContent content;
    private final CellStates states;
    private final CellWords words;
    private final CellMeasures measures;
    private final CellTiles tiles;
    private final SumPainter sums;
    private final boolean saysWords;

    VerdictCells(MatrixContent content, CellStates states, CellWords words, CellMeasures measures, CellTiles tiles,
            SumPainter sums, boolean saysWords) {
        this.sums = sums;
        this.content = content;
        this.states = states;
        this.words = words;
        this.measures = measures;
        this.tiles = tiles;
        this.saysWords = saysWords;
    }

    @Override
    public void paintCell(ILayerCell cell, GC gc, Rectangle bounds, IConfigRegistry registry) {
        if (cell.getDataValue() instanceof FitCell shown) {
            VerdictLook look = VerdictLook.of(shown.in());
            boolean faint = !content.wants(look);
            Scheme scheme = Colours.dark() ? Scheme.DARK : Scheme.LIGHT;
            gc.drawImage(tiles.tile(new CellTiles.Look(look, marks(shown), faint, scheme, bounds.width,
                    bounds.height)), bounds.x, bounds.y);
            if (!faint) {
                write(gc, shown, content.before(cell.getRowIndex(), cell.getColumnIndex()), bounds,
                        PicturePainting.color(look.tone(scheme).ink()));
            }
            frame(gc, cell, bounds, PicturePainting.color(look.tone(scheme).ink()));
        } else if (cell.getDataValue() instanceof VerdictSum sum) {
            gc.setBackground(HeadColours.paper());
            gc.fillRectangle(bounds);
            sums.paint(gc, bounds, sum);
            frame(gc, cell, bounds, HeadColours.text());
        }
    }

    private Set<SideMark> marks(FitCell shown) {
        Set<SideMark> marks = CellMarks.of(shown);
        if (states.showsStale()) {
            marks = EnumSet.copyOf(marks);
            marks.add(SideMark.STALE);
        }
        return marks;
    }

    private void write(GC gc, FitCell shown, Optional<String> before, Rectangle bounds, Color ink) {
        gc.setForeground(ink);
        int x = bounds.x + measures.glyph() + 2 * CellMeasures.PADDING;
        int y = bounds.y + CellMeasures.EDGE;
        if (saysWords) {
            gc.setFont(measures.bold());
            gc.drawText(words.verdict(shown), x, y, SWT.DRAW_TRANSPARENT);
            gc.setFont(measures.font());
            gc.drawText(before.orElseGet(() -> words.clearance(shown)), bounds.x + CellMeasures.PADDING,
                    y + measures.line(),
                    SWT.DRAW_TRANSPARENT);
        } else {
            gc.setFont(measures.font());
            gc.drawText(words.number(shown), x, y, SWT.DRAW_TRANSPARENT);
        }
    }

    private void frame(GC gc, ILayerCell cell, Rectangle bounds, Color ink) {
        if (states.justChanged(cell.getColumnIndex(), cell.getRowIndex())
                || content.before(cell.getRowIndex(), cell.getColumnIndex()).isPresent()) {
            frame(gc, bounds, ink, CHANGE_WIDTH, SWT.LINE_DASH);
        }
        if (cell.getDisplayMode().equals(DisplayMode.SELECT)) {
            frame(gc, bounds, ink, SELECTION_WIDTH, SWT.LINE_SOLID);
        }
    }

    private static void frame(GC gc, Rectangle bounds, Color color, int width, int style) {
        gc.setForeground(color);
        gc.setLineWidth(width);
        gc.setLineStyle(style);
        int inset = width / 2 + 1;
        gc.drawRectangle(bounds.x + inset - 1, bounds.y + inset - 1, bounds.width - 2 * inset,
                bounds.height - 2 * inset);
        gc.setLineWidth(1);
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    @Override
    public int getPreferredWidth(ILayerCell cell, GC gc, IConfigRegistry registry) {
        return measures.cellWidth();
    }

    @Override
    public int getPreferredHeight(ILayerCell cell, GC gc, IConfigRegistry registry) {
        return measures.cellHeight();
    }
}
