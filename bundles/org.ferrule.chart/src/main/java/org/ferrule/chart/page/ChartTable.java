/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.chart.page;

import java.util.List;

import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.picture.Box;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;

/**
 * The table of a small chart by itself, as it stands on a page, with its footnotes and its legend below: for where a
 * picture is wanted and no page. It tells neither rule set nor cautions, so it is nothing to hand out. Groups have the names
 * of those of {@link ChartPages}.
 */
public final class ChartTable {
    private static final List<Double> ENLARGEMENTS = List.of(1.15, 1.1, 1.05);
    private static final double BELOW_MM = 3;
    private static final double MOST_MM = 1e6;

    private ChartTable() {
    }

    /**
     * The picture of a chart's table.
     *
     * @param words in which it is written
     * @param widthMm of the picture; columns that have no room beside the others stand below them, and the height follows
     */
    public static Picture of(ChartContent content, ReasonWords words, double widthMm) {
        Sheet sheet = largest(new Sheet(content, words), widthMm);
        TableWidths widths = TableWidths.of(sheet, widthMm);
        Box room = new Box(0, 0, widthMm, MOST_MM);
        TablePage table = new TablePage(sheet, widths, new Span(0, content.rows().size()), widths.columns(), room);
        Counts counts = Counts.in(content);
        Legend legend = new Legend(sheet, counts, widthMm);
        double legendY = table.heightMm() + BELOW_MM;
        PictureBuilder g = new PictureBuilder();
        table.draw(g, room);
        legend.draw(g, 0, legendY);
        return g.picture(widthMm, legendY + legend.heightMm(), Printable.line(content.imprint().title()))
                .described(counts.inWords());
    }

    /** Set larger, if all columns have room beside each other then. */
    private static Sheet largest(Sheet sheet, double widthMm) {
        return ENLARGEMENTS.stream().map(sheet::enlarged)
                .filter(larger -> TableWidths.of(larger, widthMm).columns().size() == 1).findFirst().orElse(sheet);
    }
}
