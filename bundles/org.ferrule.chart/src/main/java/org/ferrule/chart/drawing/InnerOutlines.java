/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

import org.ferrule.chart.drawing.InnerOutline.Seen;
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
    private final List<InnerOutline> outlines = new ArrayList<>();

    InnerOutlines(ReadDevice device) {
        for (Stretch stretch : device.shaft(Phase.IN)) {
            stretch.shape().map(Shape::distal).ifPresent(profile -> add(stretch, profile));
        }
    }

    private void add(Stretch stretch, Profile profile) {
        if (profile.contour() instanceof Contour.Oval) {
            Figure height = profile.figures().stream().min(Comparator.comparing(Figure::centre)).orElseThrow();
            add(stretch, Seen.HEIGHT, height, 0);
        } else if (profile.contour() instanceof Contour.Bundle) {
            List<PlacedDisc> discs = profile.body(Figure::centre).enclosure().discs();
            boolean alongX = spread(discs, PlacedDisc::xMm) >= spread(discs, PlacedDisc::yMm);
            for (int i = 0; i < discs.size(); i++) {
                add(stretch, alongX ? Seen.DISC_ALONG_X : Seen.DISC_ALONG_Y, profile.figures().get(i),
                        alongX ? discs.get(i).xMm() : discs.get(i).yMm());
            }
        }
    }

    /** Discs are seen along the axis along which they lie farther apart. */
    private static double spread(List<PlacedDisc> discs, ToDoubleFunction<PlacedDisc> along) {
        DoubleSummaryStatistics all = discs.stream().mapToDouble(along).summaryStatistics();
        return all.getMax() - all.getMin();
    }

    private void add(Stretch stretch, Seen seen, Figure figure, double besideMm) {
        outlines.add(new InnerOutline(Printable.line(stretch.name()), -stretch.to().mm(), -stretch.from().mm(), seen,
                figure, besideMm));
    }

    void paint(PictureBuilder g, AxialScale axis, double centreY, double radial) {
        outlines.forEach(outline -> outline.paint(g, axis, centreY, radial));
    }

    /** Explains them. */
    Caption explain(Caption caption) {
        return caption.with("drawing.oval.measures", has(Seen.HEIGHT)).with("drawing.discs.x", has(Seen.DISC_ALONG_X))
                .with("drawing.discs.y", has(Seen.DISC_ALONG_Y));
    }

    private boolean has(Seen seen) {
        return outlines.stream().anyMatch(outline -> outline.seen() == seen);
    }

    /** The diameter of a shaft; of an oval both measures. */
    String measures(ReasonWords words, Band band) {
        String outline = BandWords.diameter(words, band);
        return outlines.stream().filter(inner -> !inner.isDisc() && inner.section().equals(Printable.line(band.name())))
                .findFirst().map(height -> outline + " \u00d7 " + words.lengths().device(height.figure().centre()))
                .orElse(outline);
    }

    /** How far the middle of one disc of a composed section lies above that of the shaft, in mm of the device. */
    OptionalDouble discMm(String section, int disc) {
        return outlines.stream().filter(inner -> inner.isDisc() && inner.section().equals(Printable.line(section)))
                .skip(disc).mapToDouble(InnerOutline::besideMm).findFirst();
    }
}
