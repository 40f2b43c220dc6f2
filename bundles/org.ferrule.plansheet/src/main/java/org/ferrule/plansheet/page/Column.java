/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.look.Glyph;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.page.Block;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Box;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextStyle;

/** Texts below each other in a column, some with a sign in front. */
final class Column {
    private static final double SIGN = 0.86;
    private static final int LEAST_LINES = 2;

    private final PageStyle style;
    private final double widthMm;
    private final int mostLines;
    private final List<Entry> entries = new ArrayList<>();

    /** Draws something small around a place. */
    @FunctionalInterface
    interface Sign {
        void draw(PictureBuilder g, Point centre, double sizeMm);
    }

    private record Entry(Block block, Optional<Sign> sign) {
    }

    /**
     * An empty column.
     *
     * @param mostLines of each text
     */
    Column(PageStyle style, double widthMm, int mostLines) {
        this.style = style;
        this.widthMm = widthMm;
        this.mostLines = mostLines;
    }

    /** An empty column of the same kind, of another width. */
    Column sibling(double otherMm) {
        return new Column(style, otherMm, mostLines);
    }

    PageStyle style() {
        return style;
    }

    Column heading(String text) {
        return add(text, style.heading(), Optional.empty(), 0.6);
    }

    /** Names; as small as the rest, so that many steps have room, and never cut to less than two lines. */
    Column strong(String text) {
        return add(text, name(), Optional.empty(), 0.1, Math.max(mostLines, LEAST_LINES));
    }

    TextStyle name() {
        return style.small().bold();
    }

    Column small(String text) {
        return add(text, style.small(), Optional.empty(), 0.1);
    }

    /** In as many lines as it takes. */
    Column full(String text) {
        return add(text, style.small(), Optional.empty(), 0.1, Integer.MAX_VALUE);
    }

    /** In as many lines as it takes, with a sign. */
    Column fullSigned(Sign sign, String text) {
        return add(text, style.small(), Optional.of(sign), 0.1, Integer.MAX_VALUE);
    }

    Column muted(String text) {
        return add(text, style.muted(), Optional.empty(), 0.1);
    }

    Column signed(Sign sign, String text, TextStyle lettering) {
        return add(text, lettering, Optional.of(sign), 0.1, mostLines);
    }

    /** A caution is never cut to less than two lines. */
    Column warning(String text, TextStyle lettering) {
        return add(text, lettering, Optional.of((g, at, size) -> Glyph.WARNING.draw(g, at, size, Ink.TEXT)), 0.1,
                Math.max(mostLines, LEAST_LINES));
    }

    /** What is to be ticked off stands there in full. */
    Column box(String text, TextStyle lettering) {
        return add(text, lettering, Optional.of(Column::checkBox), 0.1, Integer.MAX_VALUE);
    }

    /** Room below what stands there so far. */
    Column gap(double mm) {
        entries.add(new Entry(new Block("", List.of(), style.small(), 0, mm), Optional.empty()));
        return this;
    }

    /** A box to tick. */
    static void checkBox(PictureBuilder g, Point at, double sizeMm) {
        double side = sizeMm * SIGN;
        g.noFill().pen(Ink.TEXT, 0.25).rect(new Box(at.xMm() - side / 2, at.yMm() - side / 2, side, side));
    }

    /** The shape of a verdict on its ground. */
    static Sign verdict(VerdictLook look) {
        return (g, at, size) -> look.drawSign(g, at, size, Scheme.LIGHT);
    }

    private Column add(String text, TextStyle lettering, Optional<Sign> sign, double after) {
        return add(text, lettering, sign, after, mostLines);
    }

    private Column add(String text, TextStyle lettering, Optional<Sign> sign, double after, int most) {
        if (!text.isBlank()) {
            double indent = sign.isPresent() ? signMm(lettering) + 0.7 : 0;
            TextLayout layout = TextLayout.standard();
            String line = Printable.line(text);
            List<String> lines = most == Integer.MAX_VALUE ? layout.wrap(line, lettering, widthMm - indent)
                    : layout.wrap(line, lettering, widthMm - indent, most);
            entries.add(new Entry(new Block("", lines, lettering, indent, after * style.scale()), sign));
        }
        return this;
    }

    private static double signMm(TextStyle lettering) {
        return PageStyle.leading(lettering) * 0.98;
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    double heightMm() {
        return entries.stream().mapToDouble(entry -> entry.block.heightMm()).sum();
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        double y = yMm;
        for (Entry entry : entries) {
            TextStyle lettering = entry.block.style();
            double size = signMm(lettering);
            double middle = y + PageStyle.leading(lettering) / 2;
            entry.sign.ifPresent(sign -> sign.draw(g, new Point(xMm + size / 2, middle), size));
            entry.block.draw(g, xMm, y);
            y += entry.block.heightMm();
        }
    }
}
