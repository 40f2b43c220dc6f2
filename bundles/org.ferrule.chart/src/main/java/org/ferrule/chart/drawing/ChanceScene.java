/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.Locale;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.evidence.Chance;
import org.ferrule.picture.Box;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextLayout;
import org.ferrule.picture.TextMeasure;

/** How clearances of pairs taken at random are spread, and the part of them below zero. */
final class ChanceScene {
    private static final int STEPS = 120;
    private static final double DEVIATIONS = 4;

    private final Chance chance;
    private final ReasonWords words;
    private final Zones zones;
    private final Box plot;
    private final double from;
    private final double to;

    ChanceScene(Chance chance, ReasonWords words, Zones zones) {
        this.chance = chance;
        this.words = words;
        this.zones = zones;
        double top = zones.titleBaseline() + Zones.leading(zones.lettering()) + 2;
        double bottom = zones.height() - 2.5 - 2 * Zones.leading(zones.smallStyle());
        this.plot = new Box(zones.left() + 2, top, zones.right() - zones.left() - 4, Math.max(4, bottom - top));
        double spread = Math.max(chance.standardDeviationMm(), 1e-6) * DEVIATIONS;
        this.from = Math.min(chance.meanMm() - spread, -spread / 8);
        this.to = Math.max(chance.meanMm() + spread, spread / 8);
    }

    /** Draws it, and tells what is drawn. */
    String draw(PictureBuilder g) {
        g.group(Frame.named("curve"), this::curve);
        double zero = x(0);
        g.pen(DrawingInks.LIMIT, 0.4).line(zero, plot.yMm(), zero, plot.bottomMm());
        g.pen(Ink.MUTED, 0.15).line(plot.xMm(), plot.bottomMm(), plot.rightMm(), plot.bottomMm());
        number(g, 0, "0");
        number(g, chance.meanMm(), String.format(Locale.ROOT, "%.3f mm", chance.meanMm()));
        String text = words.phrases().fill("evidence.chance.text", share());
        g.lettering(zones.titleStyle().in(DrawingInks.LIMIT)).text(zones.left(),
                zones.titleBaseline() + Zones.leading(zones.lettering()),
                TextLayout.standard().shorten(text, zones.titleStyle(), zones.right() - zones.left()));
        String caption = words.phrases().fill("evidence.chance.caption", words.section(chance.deviceSection()),
                words.bore(chance.lumenSection()));
        g.lettering(zones.smallStyle()).text(zones.left(), zones.height() - 1.6,
                TextLayout.standard().shorten(caption, zones.smallStyle(), zones.right() - zones.left()));
        return text + "; " + caption;
    }

    private void curve(PictureBuilder g) {
        if (from < 0) {
            g.noPen().fill(DrawingInks.LIMIT).path(under(from, Math.min(0, to)));
        }
        Outline line = Outline.from(x(from), y(from));
        for (int i = 1; i <= STEPS; i++) {
            double value = from + (to - from) * i / STEPS;
            line.lineTo(x(value), y(value));
        }
        g.noFill().pen(DrawingInks.SHAFT_LINE, 0.4).path(line);
    }

    private Outline under(double a, double b) {
        Outline area = Outline.from(x(a), plot.bottomMm());
        for (int i = 0; i <= STEPS; i++) {
            double value = a + (b - a) * i / STEPS;
            area.lineTo(x(value), y(value));
        }
        return area.lineTo(x(b), plot.bottomMm()).close();
    }

    private void number(PictureBuilder g, double value, String text) {
        double half = TextMeasure.standard().widthMm(text, zones.smallStyle()) / 2;
        Point at = new Point(x(value),
                plot.bottomMm() + 1 + TextMeasure.standard().capHeightMm(zones.smallStyle()));
        boolean besideZero = value != 0 && Math.abs(x(value) - x(0)) < half + 4;
        if (!besideZero) {
            g.lettering(zones.smallStyle()).textMiddle(Math.max(zones.left() + half,
                    Math.min(zones.right() - half, at.xMm())), at.yMm(), text);
        }
    }

    private double x(double value) {
        return plot.xMm() + (value - from) / (to - from) * plot.widthMm();
    }

    private double y(double value) {
        double z = (value - chance.meanMm()) / Math.max(chance.standardDeviationMm(), 1e-6);
        return plot.bottomMm() - Math.exp(-z * z / 2) * plot.heightMm() * 0.95;
    }

    private String share() {
        return chance.low() == chance.high() ? number(chance.high())
                : number(chance.low()) + " \u2013 " + number(chance.high());
    }

    private static String number(double share) {
        if (share == 0) {
            return "0 %";
        }
        return String.format(Locale.ROOT, share >= 0.0001 ? "%.2f %%" : "%.1e %%", share * 100);
    }
}
