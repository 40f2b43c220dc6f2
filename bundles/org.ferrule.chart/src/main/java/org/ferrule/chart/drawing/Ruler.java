/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;

/**
 * A scale of stations in centimetres, without a unit: borders of sections first, round numbers between them where there
 * is room.
 */
final class Ruler {
    private static final double[] STEPS_MM = { 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000 };
    private static final double LEAST_SPACING_MM = 9;
    private static final double GAP_MM = 1.4;
    private static final double EDGE_MM = 0.4;

    private final AxialScale axis;
    private final TextStyle style;
    private final double widthMm;
    private final TextMeasure measure = TextMeasure.standard();
    private final List<double[]> taken = new ArrayList<>();

    Ruler(AxialScale axis, Zones zones) {
        this.axis = axis;
        this.style = zones.smallStyle();
        this.widthMm = zones.width();
    }

    static double heightMm(TextStyle style) {
        return TextMeasure.standard().leadingMm(style) + 1.6;
    }

    /**
     * Draws it.
     *
     * @param borders stations along the drawing to be named first
     * @param from the first station that it counts, to {@code to}
     */
    void draw(PictureBuilder g, Collection<Double> borders, double from, double to, double y) {
        g.pen(Ink.MUTED, 0.15).line(axis.x(from), y, axis.x(to), y);
        borders.stream().filter(station -> station >= from && station <= to).forEach(s -> tick(g, s, y, 1.4));
        double step = step();
        for (double station = Math.ceil(from / step) * step; station <= to + 1e-9; station += step) {
            if (axis.shows(station)) {
                tick(g, station, y, 0.8);
            }
        }
    }

    private void tick(PictureBuilder g, double station, double y, double length) {
        double x = axis.x(station);
        String number = number(station);
        double half = measure.widthMm(number, style) / 2;
        g.pen(Ink.MUTED, 0.15).line(x, y, x, y + length);
        x = Math.max(half + EDGE_MM, Math.min(widthMm - half - EDGE_MM, x));
        if (isFree(x - half - GAP_MM, x + half + GAP_MM)) {
            g.lettering(style).textMiddle(x, baseline(y), number);
            taken.add(new double[] { x - half, x + half });
        }
    }

    private boolean isFree(double left, double right) {
        return taken.stream().noneMatch(t -> left < t[1] && right > t[0]);
    }

    private double baseline(double y) {
        return y + 1.7 + measure.capHeightMm(style);
    }

    private double step() {
        for (double step : STEPS_MM) {
            if (step * axis.mmPerMm() >= LEAST_SPACING_MM) {
                return step;
            }
        }
        return STEPS_MM[STEPS_MM.length - 1];
    }

    private static String number(double stationMm) {
        BigDecimal cm = BigDecimal.valueOf(Math.abs(stationMm)).movePointLeft(1).setScale(2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return (cm.scale() < 0 ? cm.setScale(0) : cm).toPlainString();
    }
}
