/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.List;

import org.ferrule.chart.look.Glyph;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.SideMark;
import org.ferrule.chart.look.Tone;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.Phrases;
import org.ferrule.picture.Box;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;

/** What the shapes, words and numbers of a chart mean, with how many cells of the chart have each verdict. */
final class Legend {
    private static final double GAP_MM = 2.4;

    private final PageStyle style;
    private final Phrases phrases;
    private final Flow looks;
    private final List<String> words;

    Legend(Sheet sheet, Counts counts, double widthMm) {
        this.style = sheet.style();
        this.phrases = sheet.phrases();
        this.looks = new Flow(widthMm, chipMm() + 1);
        for (VerdictLook look : VerdictLook.values()) {
            addLook(look, counts.of(look));
        }
        for (SideMark mark : List.of(SideMark.CONFLICT, SideMark.CAUTION, SideMark.WORSE_OUT)) {
            addMark(mark);
        }
        String numbers = phrases.get("page.legend." + sheet.content().number().name());
        this.words = TextLayout.standard().wrap(numbers + ". " + phrases.get("page.legend.notes") + ".", style.muted(),
                widthMm);
    }

    private double chipMm() {
        return style.glyph() + 2 * style.padding();
    }

    private void addLook(VerdictLook look, int count) {
        String word = look.word();
        String number = Integer.toString(count);
        Tone tone = look.tone(Scheme.LIGHT);
        double wordMm = PageStyle.width(word, style.small());
        double chip = style.glyph() + 3 * style.padding() + wordMm;
        double width = chip + 1 + PageStyle.width(number, style.strong()) + GAP_MM;
        looks.add(width, (g, x, y) -> g.group(Frame.named("legend:" + look.name()), c -> {
            c.noPen().fill(tone.fill()).rect(new Box(x, y, chip, chipMm()));
            marked(c, look.glyph(), word, x + style.padding(), y, tone.ink());
            c.lettering(style.strong()).text(x + chip + 1, centred(y, style.strong()), number);
        }));
    }

    private void addMark(SideMark mark) {
        double width = style.glyph() + style.padding() + PageStyle.width(mark.word(), style.small()) + GAP_MM;
        looks.add(width, (g, x, y) -> marked(g, mark.glyph(), mark.word(), x, y, Ink.TEXT));
    }

    private void marked(PictureBuilder g, Glyph glyph, String word, double x, double y, Ink ink) {
        glyph.draw(g, new Point(x + style.glyph() / 2, y + chipMm() / 2), style.glyph(), ink);
        g.lettering(style.small().in(ink)).text(x + style.glyph() + style.padding(), centred(y, style.small()), word);
    }

    private double centred(double y, TextStyle lettering) {
        return y + chipMm() / 2 + TextMeasure.standard().capHeightMm(lettering) / 2;
    }

    double heightMm() {
        return looks.heightMm() + words.size() * PageStyle.leading(style.muted());
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        looks.draw(g, xMm, yMm);
        g.lettering(style.muted()).lines(xMm, PageStyle.baseline(yMm + looks.heightMm(), style.muted()),
                PageStyle.leading(style.muted()), words);
    }
}
