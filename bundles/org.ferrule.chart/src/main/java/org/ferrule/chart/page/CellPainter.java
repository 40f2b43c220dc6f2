/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.look.DrawingInks;
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
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;

/**
 * Paints cells: shape and word of the verdict, the clearance in two units, footnote numbers with their marks, and the
 * verdict coming out where it is worse.
 */
final class CellPainter {
    private static final double SEAM_MM = 0.25;

    private final PageStyle style;
    private final Phrases phrases;

    CellPainter(PageStyle style, Phrases phrases) {
        this.style = style;
        this.phrases = phrases;
    }

    /** The least width in which a cell shows its words and its numbers on one line each. */
    double leastWidthMm(CellView cell) {
        double word = PageStyle.width(word(cell.look()), style.small());
        double out = cell.worseOut().map(look -> PageStyle.width(out(look), style.small())).orElse(0.0);
        double numbers = PageStyle.width(cell.number(), style.strong())
                + PageStyle.width(cell.thousandths(), style.small()) + gap();
        return 2 * style.padding() + Math.max(style.glyph() + gap() + Math.max(word, out), numbers);
    }

    private String out(VerdictLook look) {
        return phrases.fill("cell.out", word(look));
    }

    /** The height that a cell needs. */
    double heightMm(CellView cell, PageNotes notes, double widthMm) {
        Flow references = references(cell, notes, widthMm, Ink.TEXT);
        double numbers = cell.number().isEmpty() ? 0 : PageStyle.leading(style.strong());
        double below = standBeside(references, cell, widthMm) ? 0 : references.heightMm();
        double out = cell.worseOut().isPresent() ? line() : 0;
        return 2 * style.padding() + line() + numbers + below + out;
    }

    /** Whether footnote numbers have room behind the word; else they stand below the clearance. */
    private boolean standBeside(Flow references, CellView cell, double widthMm) {
        double word = style.glyph() + gap() + PageStyle.width(word(cell.look()), style.small());
        return references.wholeMm() > 0 && word + gap() + references.wholeMm() <= widthMm - 2 * style.padding();
    }

    private double line() {
        return Math.max(style.glyph() + 0.3, PageStyle.leading(style.small()));
    }

    private double gap() {
        return 0.7 * style.scale();
    }

    private String word(VerdictLook look) {
        return phrases.get("cell." + look.name());
    }

    void paint(PictureBuilder g, CellView cell, PageNotes notes, Box box, String id) {
        Tone tone = cell.look().tone(Scheme.LIGHT);
        g.group(Frame.named(id).withTooltip(cell.words()), c -> {
            c.noPen().fill(tone.fill()).rect(box.inset(SEAM_MM));
            double x = box.xMm() + style.padding();
            double y = box.yMm() + style.padding();
            marked(c, cell.look().glyph(), word(cell.look()), x, y, tone.ink());
            y += line();
            y += numbers(c, cell, x, y, tone.ink());
            Flow references = references(cell, notes, box.widthMm(), tone.ink());
            boolean beside = standBeside(references, cell, box.widthMm());
            double outY = y + (beside ? 0 : references.heightMm());
            if (beside) {
                references.draw(c, box.rightMm() - style.padding() - references.wholeMm(), box.yMm() + style.padding());
            } else {
                references.draw(c, x, y);
            }
            cell.worseOut().ifPresent(out -> marked(c, SideMark.WORSE_OUT.glyph(), out(out), x, outY, tone.ink()));
        });
    }

    /** A shape and a word behind it. */
    private void marked(PictureBuilder g, Glyph glyph, String word, double x, double y, Ink ink) {
        double size = style.glyph();
        double middle = y + line() / 2;
        glyph.draw(g, new Point(x + size / 2, middle), size, ink);
        g.lettering(style.small().in(ink)).text(x + size + gap(), centred(middle, style.small()), word);
    }

    private double numbers(PictureBuilder g, CellView cell, double x, double y, Ink ink) {
        if (cell.number().isEmpty()) {
            return 0;
        }
        double baseline = PageStyle.baseline(y, style.strong());
        g.lettering(style.strong().in(ink)).text(x, baseline, cell.number());
        double behind = x + PageStyle.width(cell.number(), style.strong()) + gap();
        g.lettering(style.small().in(ink)).text(behind, baseline, cell.thousandths());
        return PageStyle.leading(style.strong());
    }

    /** Footnote numbers, each kind behind its mark; they break to a new line between numbers. */
    private Flow references(CellView cell, PageNotes notes, double widthMm, Ink ink) {
        Flow flow = new Flow(widthMm - 2 * style.padding(), line());
        for (Note.Kind kind : Note.Kind.values()) {
            List<Integer> numbers = notes.numbers(cell, kind);
            for (int i = 0; i < numbers.size(); i++) {
                boolean last = i == numbers.size() - 1;
                reference(flow, i == 0 ? kind.mark() : Optional.empty(), numbers.get(i) + (last ? " " : ","), ink);
            }
        }
        return flow;
    }

    private void reference(Flow flow, Optional<SideMark> mark, String number, Ink ink) {
        double size = style.glyph() * 0.85;
        double shift = mark.isPresent() ? size + 0.4 : 0;
        flow.add(shift + PageStyle.width(number, style.small()), (g, x, y) -> {
            double middle = y + line() / 2;
            mark.ifPresent(m -> m.glyph().draw(g, new Point(x + size / 2, middle), size, ink));
            g.lettering(style.small().in(ink)).text(x + shift, centred(middle, style.small()), number.strip());
        });
    }

    private static double centred(double middle, TextStyle style) {
        return middle + TextMeasure.standard().capHeightMm(style) / 2;
    }

    /** A pair that was not asked. */
    void paintNotAsked(PictureBuilder g, Box box) {
        g.noPen().fill(DrawingInks.LUMEN).rect(box.inset(SEAM_MM));
        g.lettering(style.muted()).textMiddle(box.centre().xMm(), centred(box.centre().yMm(), style.small()),
                phrases.get("page.notAsked"));
    }
}
