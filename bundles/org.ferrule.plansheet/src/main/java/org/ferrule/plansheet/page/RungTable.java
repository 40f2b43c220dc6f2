/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.ferrule.chart.page.PageStyle;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;
import org.ferrule.plansheet.words.PlanWords;

/** The steps, one row each. Where a limit is passed at worst, a line runs across. */
final class RungTable {
    private static final double GAP_MM = 2;
    private static final List<String> HEADS = List.of("", "step", "take", "advice");
    /** Shares of the width that the figures leave: number, step, what to take, advice. */
    private static final double[] SHARES = { 0.04, 0.255, 0.435, 0.27 };

    private final PageStyle style;
    private final PlanWords words;
    private final double widthMm;
    private final double[] left = new double[SHARES.length];
    private final double[] widths = new double[SHARES.length];
    private final List<Row> rows = new ArrayList<>();
    private final Column prototype;
    private final Figures figures;

    private record Row(Rung rung, List<Column> cells, String passed) {
        double heightMm(double padding) {
            return cells.stream().mapToDouble(Column::heightMm).max().orElse(0) + 2 * padding;
        }
    }

    RungTable(Plan plan, PlanWords words, Detail detail, PageStyle style, double widthMm) {
        this.style = style;
        this.words = words;
        this.widthMm = widthMm;
        this.prototype = new Column(style, 0, detail.lines());
        this.figures = new Figures(plan, words, style);
        double textMm = widthMm - figures.widthMm() - style.padding();
        double x = 0;
        for (int i = 0; i < SHARES.length; i++) {
            left[i] = x;
            widths[i] = SHARES[i] * textMm - GAP_MM;
            x += SHARES[i] * textMm;
        }
        RungCells cells = new RungCells(plan, words, detail);
        Set<Resource> passed = new TreeSet<>();
        plan.rungs().stream().limit(detail.rungs()).forEach(rung -> {
            Set<Resource> now = new TreeSet<>(rung.beyond());
            now.removeAll(passed);
            passed.addAll(now);
            rows.add(row(rung, cells, now));
        });
    }

    private Row row(Rung rung, RungCells cells, Set<Resource> passed) {
        List<Column> columns = new ArrayList<>();
        for (double width : widths) {
            columns.add(prototype.sibling(width));
        }
        if (cells.isAgain(rung)) {
            columns.set(1, prototype.sibling(widths[1] + GAP_MM + widths[2]));
        }
        columns.get(0).strong(Integer.toString(rung.number()));
        if (cells.isBrief(rung)) {
            columns.set(1, prototype.sibling(widths[1] + GAP_MM + widths[2]));
            cells.brief(rung, columns.get(1), columns.get(3));
            return new Row(rung, columns, passed(passed));
        }
        cells.step(rung, columns.get(1));
        cells.take(rung, columns.get(2));
        cells.advice(rung, columns.get(3));
        return new Row(rung, columns, passed(passed));
    }

    private String passed(Set<Resource> passed) {
        return passed.stream().map(words.budgets()::name).collect(Collectors.joining(", "));
    }

    private double headMm() {
        return figures.headMm() + 2 * style.padding();
    }

    private double figuresAt(double xMm) {
        return xMm + widthMm - style.padding() - figures.widthMm();
    }

    private double lineMm() {
        return PageStyle.leading(style.small()) + 1.1;
    }

    double heightMm() {
        return headMm() + rows.stream().mapToDouble(this::heightMm).sum();
    }

    private double heightMm(Row row) {
        return row.heightMm(style.padding()) + (row.passed.isEmpty() ? 0 : lineMm());
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        g.noPen().fill(Ink.TEXT).rect(xMm, yMm, widthMm, headMm());
        for (int i = 0; i < HEADS.size(); i++) {
            head(g, HEADS.get(i), new Box(xMm + left[i] + style.padding(), yMm, widths[i], headMm()));
        }
        figures.drawHeads(g, figuresAt(xMm), yMm + style.padding());
        double y = yMm + headMm();
        for (Row row : rows) {
            if (!row.passed.isEmpty()) {
                passed(g, row.passed, xMm, y);
                y += lineMm();
            }
            draw(g, row, xMm, y);
            y += row.heightMm(style.padding());
        }
        g.pen(Ink.TEXT, 0.35).line(xMm, y, xMm + widthMm, y);
    }

    /** The head of a column, at the foot of its room. */
    private void head(PictureBuilder g, String key, Box room) {
        TextStyle lettering = style.small().bold().in(Ink.PAPER);
        List<String> lines = key.isEmpty() ? List.of() : TextLayout.standard()
                .wrap(words.phrases().get("sheet.head." + key), lettering, room.widthMm(), 2);
        double top = room.bottomMm() - style.padding() - lines.size() * PageStyle.leading(lettering);
        g.lettering(lettering).lines(room.xMm(), PageStyle.baseline(top, lettering), PageStyle.leading(lettering),
                lines);
    }

    /** The line across where a limit is passed. */
    private void passed(PictureBuilder g, String what, double x, double y) {
        String text = words.phrases().fill("sheet.passed", what);
        g.pen(Stroke.of(Ink.TEXT, 0.5).dashed(Dash.of(2.0, 1.0))).line(x, y + 0.3, x + widthMm, y + 0.3);
        g.lettering(style.small().bold()).textEnd(x + widthMm - style.padding(),
                PageStyle.baseline(y + 0.9, style.small()), text);
    }

    private void draw(PictureBuilder g, Row row, double x, double y) {
        double height = row.heightMm(style.padding());
        g.group(Frame.named("rung:" + row.rung.number()), inner -> {
            if (row.rung.isSetup()) {
                inner.noPen().fill(Ink.BAND).rect(x, y, widthMm, height);
                inner.noPen().fill(Ink.TEXT).rect(new Box(x, y, 0.8, height));
            }
            inner.pen(Ink.RULE, 0.2).line(x, y, x + widthMm, y);
            for (int i = 0; i < row.cells.size(); i++) {
                row.cells.get(i).draw(inner, x + left[i] + style.padding() + (i == 0 ? 0.6 : 0), y + style.padding());
            }
            figures.draw(inner, row.rung, figuresAt(x), y + style.padding());
        });
    }
}
