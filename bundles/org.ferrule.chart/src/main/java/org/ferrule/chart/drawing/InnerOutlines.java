/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Profile;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Shape;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.picture.PictureBuilder;

/**
 * What is seen within the outlines of a device's sections that are not round: of an oval its height, of a composed
 * section each of its discs. The outline itself is as high as the circle round all of it, which is an oval's width.
 */
final class InnerOutlines {
    private final boolean acrossX;
    private final List<InnerOutline> outlines = new ArrayList<>();

    InnerOutlines(ReadDevice device) {
        acrossX = spread(device, PlacedDisc::xMm) >= spread(device, PlacedDisc::yMm);
        for (Stretch stretch : device.shaft(Phase.IN)) {
            stretch.shape().map(Shape::distal).ifPresent(profile -> add(stretch, profile));
        }
    }

    /** Along x discs mostly lie farther apart than along y. */
    private static double spread(ReadDevice device, ToDoubleFunction<PlacedDisc> along) {
        return device.shaft(Phase.IN).stream().flatMap(s -> s.shape().stream()).map(Shape::distal)
                .filter(profile -> profile.contour() instanceof Contour.Bundle)
                .map(profile -> discs(profile).stream().mapToDouble(along).summaryStatistics())
                .mapToDouble(all -> all.getMax() - all.getMin()).max().orElse(0);
    }

    private static List<PlacedDisc> discs(Profile profile) {
        return profile.body(Figure::centre).enclosure().discs();
    }

    private void add(Stretch stretch, Profile profile) {
        if (profile.contour() instanceof Contour.Oval) {
            add(stretch, false, profile.figures().stream().min(Comparator.comparing(Figure::centre)).orElseThrow(), 0);
        } else if (profile.contour() instanceof Contour.Bundle) {
            List<PlacedDisc> discs = discs(profile);
            for (int i = 0; i < discs.size(); i++) {
                double beside = acrossX ? discs.get(i).xMm() : discs.get(i).yMm();
                add(stretch, true, profile.figures().get(i), beside);
            }
        }
    }

    private void add(Stretch stretch, boolean disc, Figure figure, double besideMm) {
        outlines.add(new InnerOutline(Printable.line(stretch.name()), -stretch.to().mm(), -stretch.from().mm(), disc,
                figure, besideMm));
    }

    void paint(PictureBuilder g, AxialScale axis, double centreY, double radial) {
        outlines.forEach(outline -> outline.paint(g, axis, centreY, radial));
    }

    /** Explains them. */
    Caption explain(Caption caption) {
        return caption.with("drawing.oval.measures", outlines.stream().anyMatch(outline -> !outline.disc()))
                .with(acrossX ? "drawing.discs.x" : "drawing.discs.y", outlines.stream().anyMatch(InnerOutline::disc));
    }

    /** The diameter of a shaft; of an oval both measures. */
    String measures(ReasonWords words, Band band) {
        String outline = BandWords.diameter(words, band);
        return outlines.stream().filter(inner -> !inner.disc() && inner.section().equals(Printable.line(band.name())))
                .findFirst().map(height -> outline + " \u00d7 " + words.lengths().device(height.figure().centre()))
                .orElse(outline);
    }

    /** How far the middle of one disc of a composed section lies above that of the shaft, in mm of the device. */
    OptionalDouble discMm(String section, int disc) {
        return outlines.stream().filter(inner -> inner.disc() && inner.section().equals(Printable.line(section)))
                .skip(disc).mapToDouble(InnerOutline::besideMm).findFirst();
    }
}
