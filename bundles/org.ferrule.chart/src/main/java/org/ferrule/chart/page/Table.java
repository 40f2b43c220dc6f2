/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.Optional;

import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Box;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextLayout;

/** The part of a chart's table that stands on one page: some rows of some columns, with all their heads. */
final class Table {
    private final Sheet sheet;
    private final PageStyle style;
    private final TableWidths widths;
    private final Span rows;
    private final Span columns;
    private final double columnMm;
    private final ColumnHeads heads;
    private final CellPainter painter;
    private final PageNotes notes;

    /** Lays out a part of a table; its footnotes are added to those of its page. */
    Table(Sheet sheet, TableWidths widths, Span rows, Span columns, PageNotes notes) {
        this.sheet = sheet;
        this.style = sheet.style();
        this.widths = widths;
        this.rows = rows;
        this.columns = columns;
        this.columnMm = widths.columnMm();
        this.heads = new ColumnHeads(sheet, columns, columnMm);
        this.notes = notes;
        this.painter = new CellPainter(style, sheet.phrases());
        for (int row = rows.from(); row < rows.to(); row++) {
            for (int column = columns.from(); column < columns.to(); column++) {
                sheet.cell(row, column).ifPresent(notes::add);
            }
        }
    }

    double heightMm() {
        double height = heads.heightMm();
        for (int row = rows.from(); row < rows.to(); row++) {
            height += groupMm(row) + rowMm(row);
        }
        return height;
    }

    private Head head(int row) {
        return sheet.content().rows().get(row);
    }

    private HeadText text(int row) {
        boolean withKind = HeadText.showsKind(sheet.content().rows());
        return HeadText.of(head(row), withKind, sheet.figure(head(row), "page.figure.row"), style,
                widths.headMm() - 2 * style.padding());
    }

    /** The height of a row without the title of a group above it. */
    private double rowMm(int row) {
        double most = text(row).heightMm(style) + 2 * style.padding();
        for (int column = columns.from(); column < columns.to(); column++) {
            Optional<CellView> cell = sheet.cell(row, column);
            if (cell.isPresent()) {
                most = Math.max(most, painter.heightMm(cell.get(), notes, columnMm));
            }
        }
        return most;
    }

    /** The height of the title of a group above a row; it is repeated at the top of a page. */
    private double groupMm(int row) {
        boolean titled = !head(row).group().isEmpty()
                && (row == rows.from() || Span.startsGroup(sheet.content().rows(), row));
        return titled ? PageStyle.leading(style.strong()) + style.padding() : 0;
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        heads.draw(g, xMm + widths.headMm(), yMm);
        double y = yMm + heads.heightMm();
        for (int row = rows.from(); row < rows.to(); row++) {
            y += drawGroup(g, row, xMm, y);
            y += drawRow(g, row, xMm, y);
        }
        g.pen(Ink.RULE, 0.2).line(xMm, y, xMm + widths.headMm() + columns.size() * columnMm, y);
    }

    private double drawGroup(PictureBuilder g, int row, double x, double y) {
        double height = groupMm(row);
        if (height > 0) {
            double width = widths.headMm() + columns.size() * columnMm;
            g.noPen().fill(Ink.BAND).rect(new Box(x, y, width, height).inset(0.2));
            String title = TextLayout.standard().shorten(Printable.line(head(row).group()), style.strong(),
                    width - 2 * style.padding());
            g.lettering(style.strong()).text(x + style.padding(),
                    PageStyle.baseline(y + style.padding() / 2, style.strong()), title);
        }
        return height;
    }

    private double drawRow(PictureBuilder g, int row, double x, double y) {
        double height = rowMm(row);
        g.pen(Ink.RULE, 0.15).line(x, y, x + widths.headMm(), y);
        g.group(Frame.named("row:" + row).withTooltip(Printable.line(head(row).title())),
                h -> text(row).forEachLine(style, (line, lettering, baseline) -> h.lettering(lettering)
                        .text(x + style.padding(), y + style.padding() + baseline, line)));
        for (int column = columns.from(); column < columns.to(); column++) {
            Box box = new Box(x + widths.headMm() + (column - columns.from()) * columnMm, y, columnMm, height);
            Optional<CellView> cell = sheet.cell(row, column);
            if (cell.isPresent()) {
                painter.paint(g, cell.get(), notes, box, "cell:" + row + "," + column);
            } else {
                painter.paintNotAsked(g, box);
            }
            if (column > columns.from() && Span.startsGroup(sheet.content().columns(), column)) {
                g.pen(Ink.MUTED, 0.2).line(box.xMm(), y, box.xMm(), y + height);
            }
        }
        return height;
    }
}
