/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.List;

import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Box;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Text;

/** The heads of columns: upright when columns are wide, else turned to read upwards; above them their groups. */
final class ColumnHeads {
    private static final double UPRIGHT_FROM_MM = 24;
    private static final double SHORTEST_MM = 18;

    private final Sheet sheet;
    private final PageStyle style;
    private final Span span;
    private final double columnMm;
    private final boolean upright;
    private final boolean withKind;
    private final double headMm;

    ColumnHeads(Sheet sheet, Span span, double columnMm) {
        this.sheet = sheet;
        this.style = sheet.style();
        this.span = span;
        this.columnMm = columnMm;
        this.upright = columnMm >= UPRIGHT_FROM_MM * style.scale();
        this.withKind = HeadText.showsKind(sheet.content().columns());
        this.headMm = height();
    }

    private Head head(int column) {
        return sheet.content().columns().get(column);
    }

    private double height() {
        double most = 0;
        for (int column = span.from(); column < span.to(); column++) {
            HeadText text = text(column);
            most = Math.max(most, upright ? text.heightMm(style) : text.widthMm(style));
        }
        return most + 2 * style.padding();
    }

    /** Breaks a head so that it stays in its column: turned heads grow longer until their lines fit side by side. */
    private HeadText text(int column) {
        if (upright) {
            return broken(column, columnMm - 2 * style.padding());
        }
        double word = HeadText.longestWordMm(head(column), tellsKind(column), figure(column), style);
        double length = Math.max(SHORTEST_MM * style.scale(), word);
        HeadText text = broken(column, length);
        while (text.heightMm(style) > columnMm - 1 && text.lines().size() > 2) {
            length += 2;
            text = broken(column, length);
        }
        return text;
    }

    /** Where the title of its group does not fit above, a head tells its kind instead. */
    private HeadText broken(int column, double lengthMm) {
        return HeadText.of(head(column), tellsKind(column), figure(column), style, lengthMm);
    }

    private String figure(int column) {
        return sheet.figure(head(column), "page.figure.column");
    }

    private boolean tellsKind(int column) {
        return withKind || !groupFits(column);
    }

    private boolean groupFits(int column) {
        List<Head> heads = sheet.content().columns();
        int from = column;
        while (from > span.from() && !Span.startsGroup(heads, from)) {
            from--;
        }
        int to = column + 1;
        while (to < span.to() && !Span.startsGroup(heads, to)) {
            to++;
        }
        return groupFits(head(column).group(), (to - from) * columnMm);
    }

    private boolean groupFits(String group, double widthMm) {
        return PageStyle.width(Printable.line(group), style.strong()) <= widthMm - 2 * style.padding();
    }

    double heightMm() {
        return groupMm() + headMm;
    }

    private double groupMm() {
        boolean grouped = sheet.content().columns().stream().anyMatch(head -> !head.group().isEmpty());
        return grouped ? PageStyle.leading(style.strong()) + style.padding() : 0;
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        drawGroups(g, xMm, yMm);
        for (int column = span.from(); column < span.to(); column++) {
            Box box = new Box(xMm + (column - span.from()) * columnMm, yMm + groupMm(), columnMm, headMm);
            int index = column;
            g.group(Frame.named("column:" + column).withTooltip(Printable.line(head(column).title())),
                    h -> drawHead(h, text(index), box));
        }
    }

    private void drawHead(PictureBuilder g, HeadText text, Box box) {
        g.pen(Ink.RULE, 0.15).line(box.xMm(), box.yMm(), box.xMm(), box.bottomMm());
        if (upright) {
            text.forEachLine(style, (line, lettering, baseline) -> g.lettering(lettering)
                    .text(box.xMm() + style.padding(), box.bottomMm() - style.padding() - text.heightMm(style)
                            + baseline, line));
            return;
        }
        double left = box.centre().xMm() - text.heightMm(style) / 2;
        text.forEachLine(style, (line, lettering, baseline) -> g.lettering(lettering).text(left + baseline,
                box.bottomMm() - style.padding(), line, Text.Anchor.START, -90));
    }

    private void drawGroups(PictureBuilder g, double xMm, double yMm) {
        if (groupMm() == 0) {
            return;
        }
        int from = span.from();
        for (int column = span.from() + 1; column <= span.to(); column++) {
            if (column == span.to() || Span.startsGroup(sheet.content().columns(), column)) {
                drawGroup(g, head(from).group(), new Box(xMm + (from - span.from()) * columnMm, yMm,
                        (column - from) * columnMm, groupMm()));
                from = column;
            }
        }
    }

    private void drawGroup(PictureBuilder g, String group, Box box) {
        g.noPen().fill(Ink.BAND).rect(box.inset(0.2));
        if (groupFits(group, box.widthMm())) {
            g.lettering(style.strong()).text(box.xMm() + style.padding(),
                    PageStyle.baseline(box.yMm() + style.padding() / 2, style.strong()), Printable.line(group));
        }
    }
}
