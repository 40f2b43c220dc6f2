/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Text;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;

/** The frame of a plot: round numbers along and across, thin lines through the plot at those across. */
public final class Axes {
    private static final double LEAST_SPACING_MM = 11;
    private static final double LEAST_RISE_MM = 6;
    private static final double TICK_MM = 0.9;

    private final PlotArea area;
    private final TextStyle style;
    private final TextMeasure measure = TextMeasure.standard();

    /** Axes round an area with numbers in that lettering. */
    public Axes(PlotArea area, TextStyle style) {
        this.area = area;
        this.style = style.in(Ink.MUTED);
    }

    /**
     * Numbers below the plot.
     *
     * @param perUnit how many of the area's units one unit of the numbers is
     * @param words below the numbers
     */
    public void along(PictureBuilder g, double perUnit, String words) {
        along(g, perUnit, 0, words);
    }

    /** Whole numbers below the plot, for things that are counted. */
    public void counts(PictureBuilder g, String words) {
        along(g, 1, 1, words);
    }

    private void along(PictureBuilder g, double perUnit, double leastStep, String words) {
        double step = Math.max(leastStep,
                step((area.right() - area.left()) / perUnit, area.box().widthMm() / LEAST_SPACING_MM));
        double bottom = area.box().bottomMm();
        double baseline = bottom + TICK_MM + 0.5 + measure.capHeightMm(style);
        for (double value = first(area.left() / perUnit, step); value * perUnit <= area.right(); value += step) {
            double x = area.x(value * perUnit);
            g.pen(Ink.MUTED, 0.15).line(x, bottom, x, bottom + TICK_MM);
            g.lettering(style).textMiddle(x, baseline, number(value, step));
        }
        g.pen(Ink.MUTED, 0.2).line(area.box().xMm(), bottom, area.box().rightMm(), bottom);
        g.lettering(style).textMiddle(area.box().centre().xMm(), baseline + measure.leadingMm(style), words);
    }

    /**
     * Numbers to the left of the plot.
     *
     * @param perUnit how many of the area's units one unit of the numbers is
     * @param words beside the numbers, reading upwards
     */
    public void across(PictureBuilder g, double perUnit, String words) {
        double step = step((area.top() - area.bottom()) / perUnit, area.box().heightMm() / LEAST_RISE_MM);
        double left = area.box().xMm();
        for (double value = first(area.bottom() / perUnit, step); value * perUnit <= area.top(); value += step) {
            double y = area.y(value * perUnit);
            g.pen(Ink.RULE, 0.1).line(left, y, area.box().rightMm(), y);
            g.lettering(style).textEnd(left - 1, y + measure.capHeightMm(style) / 2, number(value, step));
        }
        g.pen(Ink.MUTED, 0.2).line(left, area.box().yMm(), left, area.box().bottomMm());
        double x = left - roomMm(style) + measure.capHeightMm(style) + 0.4;
        g.lettering(style).text(x, area.box().centre().yMm(), words, Text.Anchor.MIDDLE, -90);
    }

    /** The room to the left of a plot. */
    public static double roomMm(TextStyle style) {
        return TextMeasure.standard().widthMm("0.000", style) + TextMeasure.standard().leadingMm(style) + 1.2;
    }

    /** The room below a plot. */
    public static double depthMm(TextStyle style) {
        return TICK_MM + 0.9 + 2 * TextMeasure.standard().leadingMm(style);
    }

    private static double first(double from, double step) {
        return Math.ceil(from / step - 1e-9) * step;
    }

    /** The smallest of 1, 2, 5 times a power of ten that is no finer than there is room for. */
    static double step(double range, double most) {
        double least = range / Math.max(1, most);
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double factor : new double[] { 1, 2, 5 }) {
            if (factor * power >= least * (1 - 1e-9)) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    private static String number(double value, double step) {
        int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded).toPlainString();
    }
}
