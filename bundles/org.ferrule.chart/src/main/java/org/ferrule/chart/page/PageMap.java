/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import org.ferrule.picture.Box;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;

/**
 * Shows how the pages of a chart's table lie beside and below each other; none where there is one page.
 *
 * @param down how many pages below each other
 * @param across how many pages beside each other
 */
record PageMap(int down, int across) {
    private static final double CELL_WIDTH_MM = 5.2;
    private static final double CELL_HEIGHT_MM = 3.6;
    private static final double MOST_HEIGHT_MM = 14;
    private static final double MOST_WIDTH_MM = 40;
    private static final TextStyle NUMBERS = TextStyle.ofPt(6.5).condensed();

    double widthMm() {
        return down * across < 2 ? 0 : across * cellWidth();
    }

    double heightMm() {
        return down * across < 2 ? 0 : down * cellHeight();
    }

    private double cellWidth() {
        return Math.min(CELL_WIDTH_MM, MOST_WIDTH_MM / across);
    }

    private double cellHeight() {
        return Math.min(CELL_HEIGHT_MM, MOST_HEIGHT_MM / down);
    }

    /** Draws it with one page marked; pages count from 0, across first; none is marked beyond the last. */
    void draw(PictureBuilder g, double xMm, double yMm, int page) {
        if (down * across < 2) {
            return;
        }
        boolean numbered = cellHeight() == CELL_HEIGHT_MM && cellWidth() == CELL_WIDTH_MM;
        for (int i = 0; i < down * across; i++) {
            Box cell = new Box(xMm + i % across * cellWidth(), yMm + i / across * cellHeight(), cellWidth(),
                    cellHeight());
            boolean here = i == page;
            g.pen(Ink.MUTED, 0.15).fill(here ? Ink.TEXT : Ink.PAPER).rect(cell);
            if (numbered) {
                g.lettering(NUMBERS.in(here ? Ink.PAPER : Ink.TEXT)).textMiddle(cell.centre().xMm(),
                        cell.centre().yMm() + TextMeasure.standard().capHeightMm(NUMBERS) / 2,
                        Integer.toString(i + 1));
            }
        }
    }
}
