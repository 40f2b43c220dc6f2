/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.look.SideMark;
import org.ferrule.chart.words.Printable;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextLayout;

/** Cautions and footnotes at the foot of a page, with the sign of a warning. */
public final class Footer {
    private static final double ABOVE_MM = 1.6;

    private final PageStyle style;
    private final double widthMm;
    private final List<String> lines = new ArrayList<>();

    /** The foot of a page of a chart: the cautions and the author's footnotes. */
    static Footer of(Sheet sheet, double widthMm) {
        List<String> texts = new ArrayList<>(List.of(sheet.phrases().get("page.caution")));
        sheet.content().footnotes().stream().filter(note -> !note.isBlank()).forEach(texts::add);
        return new Footer(sheet.style(), texts, widthMm);
    }

    /** A foot with some texts, the cautions first. */
    public Footer(PageStyle style, List<String> texts, double widthMm) {
        this.style = style;
        this.widthMm = widthMm;
        texts.forEach(this::add);
    }

    private void add(String text) {
        lines.addAll(TextLayout.standard().wrap(Printable.line(text), style.small(), widthMm - indent()));
    }

    private double indent() {
        return style.glyph() + 1.2;
    }

    /** The room that it takes. */
    public double heightMm() {
        return lines.size() * PageStyle.leading(style.small()) + ABOVE_MM;
    }

    /** Draws it with its upper left corner at a place. */
    public void draw(PictureBuilder g, double xMm, double yMm) {
        g.group(Frame.named("caution"), c -> {
            c.pen(Ink.TEXT, 0.35).line(xMm, yMm + ABOVE_MM / 4, xMm + widthMm, yMm + ABOVE_MM / 4);
            SideMark.CAUTION.glyph().draw(c, new Point(xMm + style.glyph() / 2, yMm + ABOVE_MM + style.glyph() / 2),
                    style.glyph(), Ink.TEXT);
            c.lettering(style.small()).lines(xMm + indent(), PageStyle.baseline(yMm + ABOVE_MM, style.small()),
                    PageStyle.leading(style.small()), lines);
        });
    }
}
