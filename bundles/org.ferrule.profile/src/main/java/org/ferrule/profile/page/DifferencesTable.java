/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.page;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.look.CurveLook;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.table.Differences;
import org.ferrule.profile.words.FindingWords;
import org.ferrule.profile.words.ProfileWords;

/** The table of differences on paper: a row for each quantity, a column for each device. */
final class DifferencesTable {
    private static final double HEAD_MM = 34;
    private static final double SPREAD_MM = 20;
    private static final double SAMPLE_MM = 8;

    private final PageStyle style;
    private final double widthMm;
    private final double columnMm;
    private final List<Row> rows = new ArrayList<>();

    /** Cells broken into lines. */
    private record Row(List<List<String>> cells, TextStyle lettering) {
        double heightMm(PageStyle style) {
            int lines = cells.stream().mapToInt(List::size).max().orElse(1);
            return lines * PageStyle.leading(lettering) + 2 * style.padding();
        }
    }

    DifferencesTable(ProfileComparison comparison, ProfileWords words, PageStyle style, double widthMm) {
        this.style = style;
        this.widthMm = widthMm;
        this.columnMm = (widthMm - HEAD_MM - SPREAD_MM) / comparison.devices().size();
        FindingWords findings = new FindingWords(comparison, words);
        List<String> head = new ArrayList<>(List.of(words.phrases().get("value.quantity")));
        for (int i = 0; i < comparison.devices().size(); i++) {
            head.add(findings.device(i));
        }
        head.add(words.phrases().get("value.spread"));
        add(head, style.strong());
        comparison.differences().rows().forEach(row -> add(cells(row, words), style.small()));
    }

    private static List<String> cells(Differences.Row row, ProfileWords words) {
        List<String> cells = new ArrayList<>(List.of(words.quantity(row.quantity())));
        row.values().forEach(value -> cells.add(words.value(value)));
        cells.add(words.spread(row));
        return cells;
    }

    private void add(List<String> cells, TextStyle lettering) {
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            double room = widthMm(i, cells.size()) - 2 * style.padding()
                    - (rows.isEmpty() && isDevice(i, cells) ? SAMPLE_MM : 0);
            lines.add(TextLayout.standard().wrap(Printable.line(cells.get(i)), lettering, room));
        }
        rows.add(new Row(lines, lettering));
    }

    private static boolean isDevice(int cell, List<?> cells) {
        return cell > 0 && cell < cells.size() - 1;
    }

    private double widthMm(int cell, int cells) {
        return cell == 0 ? HEAD_MM : cell == cells - 1 ? SPREAD_MM : columnMm;
    }

    double heightMm() {
        return rows.stream().mapToDouble(row -> row.heightMm(style)).sum();
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        g.group(Frame.named("differences"), table -> {
            double y = yMm;
            for (int i = 0; i < rows.size(); i++) {
                if (i % 2 == 1) {
                    table.noPen().fill(Ink.BAND).rect(xMm, y, widthMm, rows.get(i).heightMm(style));
                }
                draw(table, rows.get(i), i == 0, xMm, y);
                y += rows.get(i).heightMm(style);
                table.pen(i == 0 ? Ink.TEXT : Ink.RULE, i == 0 ? 0.3 : 0.1).line(xMm, y, xMm + widthMm, y);
            }
        });
    }

    private void draw(PictureBuilder g, Row row, boolean head, double xMm, double yMm) {
        double x = xMm;
        double baseline = PageStyle.baseline(yMm + style.padding(), row.lettering);
        for (int i = 0; i < row.cells.size(); i++) {
            double left = x + style.padding();
            if (head && isDevice(i, row.cells)) {
                double middle = yMm + row.heightMm(style) / 2;
                g.pen(CurveLook.of(i - 1).stroke(0.5)).line(left, middle, left + SAMPLE_MM - 1.5, middle);
                left += SAMPLE_MM;
            }
            g.lettering(row.lettering).lines(left, baseline, PageStyle.leading(row.lettering), row.cells.get(i));
            x += widthMm(i, row.cells.size());
        }
    }
}
