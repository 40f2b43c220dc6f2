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

/** The cautions and the author's footnotes; they stand at the foot of every page. */
final class Footer {
    private static final double ABOVE_MM = 1.6;

    private final PageStyle style;
    private final double widthMm;
    private final List<String> lines = new ArrayList<>();

    Footer(Sheet sheet, double widthMm) {
        this.style = sheet.style();
        this.widthMm = widthMm;
        add(sheet.phrases().get("page.caution"));
        sheet.content().footnotes().stream().filter(note -> !note.isBlank()).forEach(this::add);
    }

    private void add(String text) {
        lines.addAll(TextLayout.standard().wrap(Printable.line(text), style.small(), widthMm - indent()));
    }

    private double indent() {
        return style.glyph() + 1.2;
    }

    double heightMm() {
        return lines.size() * PageStyle.leading(style.small()) + ABOVE_MM;
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        g.group(Frame.named("caution"), c -> {
            c.pen(Ink.TEXT, 0.35).line(xMm, yMm + ABOVE_MM / 4, xMm + widthMm, yMm + ABOVE_MM / 4);
            SideMark.CAUTION.glyph().draw(c, new Point(xMm + style.glyph() / 2, yMm + ABOVE_MM + style.glyph() / 2),
                    style.glyph(), Ink.TEXT);
            c.lettering(style.small()).lines(xMm + indent(), PageStyle.baseline(yMm + ABOVE_MM, style.small()),
                    PageStyle.leading(style.small()), lines);
        });
    }
}
