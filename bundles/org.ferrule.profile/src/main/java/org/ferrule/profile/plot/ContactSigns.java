/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import java.util.Optional;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.fit.passage.FirstContacts.Meeting;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.LumenPassage;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.words.FindingWords;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;

/** The first contacts with lumens: a cross where a device stops, a triangle where it may, in the worst case. */
final class ContactSigns {
    private static final double SIZE_MM = 1.1;

    private final PlotArea area;
    private final ProfileComparison comparison;
    private final FindingWords words;
    private final TextStyle style;

    ContactSigns(PlotArea area, ProfileComparison comparison, FindingWords words, TextStyle style) {
        this.area = area;
        this.comparison = comparison;
        this.words = words;
        this.style = style.in(DrawingInks.LIMIT);
    }

    void draw(PictureBuilder g) {
        comparison.passages().forEach(passage -> draw(g, passage));
    }

    private void draw(PictureBuilder g, LumenPassage passage) {
        passage.worstAt().filter(at -> passage.isWorseAtItsWorst())
                .ifPresent(at -> sign(g, passage, "worst", point(at, passage.contacts().worst(), true)));
        passage.stopsAt().ifPresent(at -> sign(g, passage, "stop", point(at, passage.contacts().stop(), false)));
    }

    private Point point(Length station, Optional<Meeting> meeting, boolean worst) {
        Length diameter = meeting.map(m -> worst ? m.at().deviceDiameter().high() : m.at().deviceDiameter().centre())
                .orElseThrow();
        return new Point(area.x(station.mm()), area.y(diameter.mm()));
    }

    private void sign(PictureBuilder g, LumenPassage passage, String what, Point at) {
        String id = "contact:" + comparison.devices().get(passage.device()).id() + ":"
                + ProfileWords.lineSign(passage.line()) + ":" + what;
        String label = ProfileWords.letter(passage.device()) + " " + ProfileWords.lineSign(passage.line());
        g.group(Frame.named(id).withTooltip(words.passage(passage)), inner -> {
            draw(inner, what.equals("stop"), at, SIZE_MM);
            inner.lettering(style).text(at.xMm() + SIZE_MM + 0.6, at.yMm() - 0.6, label);
        });
    }

    /** The sign alone. */
    static void draw(PictureBuilder g, boolean stop, Point at, double size) {
        if (stop) {
            g.noPen().fill(Ink.PAPER).circle(at.xMm(), at.yMm(), size);
            g.noFill().pen(DrawingInks.LIMIT, 0.5)
                    .line(at.xMm() - size, at.yMm() - size, at.xMm() + size, at.yMm() + size)
                    .line(at.xMm() - size, at.yMm() + size, at.xMm() + size, at.yMm() - size);
        } else {
            g.fill(Ink.PAPER).pen(DrawingInks.LIMIT, 0.35).polygon(new Point(at.xMm(), at.yMm() - size),
                    new Point(at.xMm() + size, at.yMm() + size * 0.8),
                    new Point(at.xMm() - size, at.yMm() + size * 0.8));
        }
    }
}
