/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.look.CurveLook;
import org.ferrule.picture.Frame;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.curve.DeviceCurves;
import org.ferrule.profile.curve.Reading;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;

/** Letters on the curves, each at a place of its own where the curve is known. */
final class CurveTags {
    private static final int PLACES = 48;

    private final PlotArea area;
    private final ProfileComparison comparison;
    private final TextStyle style;

    CurveTags(PlotArea area, ProfileComparison comparison, TextStyle style) {
        this.area = area;
        this.comparison = comparison;
        this.style = style.bold();
    }

    void draw(PictureBuilder g) {
        double radius = TextMeasure.standard().capHeightMm(style) * 0.82;
        double baseline = TextMeasure.standard().capHeightMm(style) / 2;
        int count = comparison.devices().size();
        for (int i = 0; i < count; i++) {
            int number = i;
            comparison.devices().get(i).curves().flatMap(curves -> place(curves, (number + 0.6) / (count + 0.2)))
                    .ifPresent(place -> g.group(Frame.named("tag:" + comparison.devices().get(number).id()), inner -> {
                        CurveLook look = CurveLook.of(number);
                        inner.lettering(style.in(look.ink()));
                        new CurvePainter(area, look).tag(inner, place, ProfileWords.letter(number), radius, baseline);
                    }));
        }
    }

    /** The place on the curve, in sight, that is nearest to a share of the width. */
    private Optional<Point> place(DeviceCurves curves, double share) {
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i <= PLACES; i++) {
            shares.add((i + 0.5) / (PLACES + 1));
        }
        shares.sort(Comparator.comparingDouble(s -> Math.abs(s - share)));
        return shares.stream().map(s -> area.left() + s * (area.right() - area.left()))
                .flatMap(along -> point(curves, along).stream()).findFirst();
    }

    private Optional<Point> point(DeviceCurves curves, double along) {
        Reading reading = curves.outer().at(Length.ofMm(along));
        if (reading instanceof Reading.Known known) {
            double y = area.y(known.figure().centre().mm());
            boolean inSight = y >= area.box().yMm() && y <= area.box().bottomMm();
            return inSight ? Optional.of(new Point(area.x(along), y)) : Optional.empty();
        }
        return Optional.empty();
    }
}
