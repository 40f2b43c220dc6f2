/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.ferrule.picture.Box;
import org.ferrule.profile.DeviceReading;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.curve.Curve;
import org.ferrule.profile.plot.ProfilePlot;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.ui.picture.PictureRuler;

/** Reads the outer diameters of a plot at a station. */
final class PlotRuler implements PictureRuler {

    private static final double FINE_BELOW_MM = 120;
    private static final double FINE_MM = 0.1;
    private static final double SHORT_MM = 100;
    private static final double COARSE_MM = 1;
    private static final double LARGE = 10;

    private final ProfileComparison comparison;
    private final ProfilePlot plot;
    private final ProfileWords words;

    PlotRuler(ProfileComparison comparison, ProfilePlot plot, ProfileWords words) {
        this.comparison = comparison;
        this.plot = plot;
        this.words = words;
    }

    @Override
    public Box area() {
        return plot.area().box();
    }

    @Override
    public double valueAt(double xMm) {
        return plot.area().along(xMm);
    }

    @Override
    public double xMm(double value) {
        return plot.area().x(value);
    }

    /** Fine where little of the length is in sight. */
    @Override
    public double step(boolean large) {
        double step = plot.area().right() - plot.area().left() < FINE_BELOW_MM ? FINE_MM : COARSE_MM;
        return large ? LARGE * step : step;
    }

    @Override
    public List<String> read(double value) {
        Length station = Length.ofMm(value);
        List<String> lines = new ArrayList<>();
        lines.add(place(station));
        for (DeviceReading reading : comparison.valuesAt(station)) {
            lines.add(ProfileWords.letter(reading.device()) + "  "
                    + words.reading(reading.outer(), Curve.Kind.OUTER));
        }
        return lines;
    }

    /** As fine as the cursor moves: elsewhere tenths of a millimetre are left out of long distances. */
    private String place(Length station) {
        if (step(false) >= COARSE_MM || station.abs().mm() < SHORT_MM) {
            return words.station(station, comparison.landmark());
        }
        return words.phrases().fill(station.isNegative() ? "passage.distal" : "passage.proximal",
                String.format(Locale.ROOT, "%.1f mm", station.abs().mm()), words.from(comparison.landmark()));
    }
}
