/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.ui.fit.answer.VerdictImages;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.picture.PicturePainting;

/**
 * Paints a sum of verdicts: a bar with a share for each, and below it the numbers, each beside the shape of its verdict,
 * so that they are told apart without colour.
 */
final class SumPainter {

    static final int GLYPH = 12;
    private static final int GAP = 3;
    private static final int DIGITS = 4;
    private static final int HIGH_BAR = 6;
    private static final int LOW_BAR = 3;

    private final CellMeasures measures;
    private final VerdictImages images;

    SumPainter(CellMeasures measures, VerdictImages images) {
        this.measures = measures;
        this.images = images;
    }

    /** The room of one number with its shape. */
    static int slot(CellMeasures measures) {
        return GLYPH + GAP + DIGITS * measures.letter() + GAP;
    }

    /** The width in which all numbers stand side by side. */
    static int wide(CellMeasures measures) {
        return Verdict.values().length * slot(measures) + 2 * CellMeasures.PADDING;
    }

    /** The height in which all numbers stand in a width. */
    static int high(CellMeasures measures, int width) {
        int lines = (Verdict.values().length + perLine(measures, width) - 1) / perLine(measures, width);
        return lines * line(measures) + HIGH_BAR + 2 * CellMeasures.EDGE;
    }

    private static int line(CellMeasures measures) {
        return Math.max(GLYPH + 1, measures.line());
    }

    private static int perLine(CellMeasures measures, int width) {
        return Math.max(1, (width - 2 * CellMeasures.PADDING + GAP) / slot(measures));
    }

    void paint(GC gc, Rectangle bounds, VerdictSum sum) {
        int x = bounds.x + CellMeasures.PADDING;
        int width = bounds.width - 2 * CellMeasures.PADDING;
        boolean room = bounds.height >= high(measures, bounds.width);
        int bar = room ? HIGH_BAR : LOW_BAR;
        int top = bounds.y + (room ? CellMeasures.EDGE : 1);
        bar(gc, new Rectangle(x, top, width, bar), sum);
        numbers(gc, new Rectangle(x, top + bar, width, bounds.height), sum, perLine(measures, bounds.width));
    }

    private static void bar(GC gc, Rectangle bar, VerdictSum sum) {
        Scheme scheme = Colours.dark() ? Scheme.DARK : Scheme.LIGHT;
        int total = Math.max(1, sum.total());
        int done = 0;
        for (Verdict verdict : Verdict.values()) {
            int from = bar.x + Math.round((float) bar.width * done / total);
            done += sum.of(verdict);
            int to = bar.x + Math.round((float) bar.width * done / total);
            if (to > from) {
                gc.setBackground(PicturePainting.color(VerdictSum.look(verdict).tone(scheme).fill().ground()
                        .orElse(VerdictSum.look(verdict).tone(scheme).ink())));
                gc.fillRectangle(from, bar.y, to - from, bar.height);
            }
        }
        gc.setForeground(HeadColours.detail());
        gc.drawRectangle(bar.x, bar.y, bar.width - 1, bar.height - 1);
    }

    private void numbers(GC gc, Rectangle room, VerdictSum sum, int perLine) {
        gc.setFont(measures.font());
        int place = 0;
        for (Verdict verdict : Verdict.values()) {
            VerdictLook look = VerdictSum.look(verdict);
            int x = room.x + place % perLine * slot(measures);
            int y = room.y + place / perLine * line(measures) - 1;
            int count = sum.of(verdict);
            gc.setAlpha(count == 0 ? 90 : 255);
            gc.drawImage(images.of(look), x, y + (line(measures) - GLYPH) / 2 + 1);
            gc.setAlpha(255);
            gc.setForeground(count == 0 ? HeadColours.detail() : HeadColours.text());
            gc.drawText(String.format(Locale.ROOT, "%d", count), x + GLYPH + GAP, y + 1, SWT.DRAW_TRANSPARENT);
            place++;
        }
    }
}
