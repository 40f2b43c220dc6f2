/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.words.Printable;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;

/** Paints what lies still in the lumen of a pair: pale outlines at its ceiling, and the tube that the device passes. */
final class StillPainter {
    private static final double UNKNOWN_SHARE = 0.8;

    private final StillBodies still;
    private final AxialScale axis;
    private final BodyPainter painter;
    private final double centreY;
    private final double ceilingY;
    private final Rest floor;
    private final List<StillBody> beside;

    /**
     * A painter.
     *
     * @param centreY of the lumen
     * @param ceilingY of its narrowest place
     * @param floor of its narrowest place
     */
    StillPainter(StillBodies still, AxialScale axis, BodyPainter painter, double centreY, double ceilingY,
            Rest floor) {
        this.still = still;
        this.axis = axis;
        this.painter = painter;
        this.centreY = centreY;
        this.ceilingY = ceilingY;
        this.floor = floor;
        this.beside = still.beside().stream().map(body -> body.cut(axis.from(), axis.to()))
                .filter(body -> !body.bands().isEmpty()).toList();
    }

    boolean hasBeside() {
        return !beside.isEmpty();
    }

    /** The tube with its lumen and its collar. */
    void tube(PictureBuilder g, ReasonWords words) {
        still.tube().map(body -> body.cut(axis.from(), axis.to())).ifPresent(body -> {
            g.group(Frame.named(body.id()).withTooltip(Printable.line(body.name())), t -> body.bands().stream()
                    .filter(b -> b.diameter().isPresent()).forEach(b -> painter.tube(t, b, centreY)));
            still.tubeBore().forEach(band -> bore(g, band, body, words));
            still.collar().ifPresent(place -> collar(g, place, body.thickest() / 2 * painter.radial()));
        });
    }

    private void bore(PictureBuilder g, Band band, StillBody body, ReasonWords words) {
        if (band.diameter().isPresent()) {
            painter.bore(g, band, centreY, "lumen:" + Printable.line(band.name()));
        } else {
            painter.unknown(g, band, Rest.centred(centreY), UNKNOWN_SHARE * body.thickest(), "lumen",
                    words.bore(band.name()));
        }
    }

    private void collar(PictureBuilder g, double place, double half) {
        double x = axis.x(place);
        g.group(Frame.named("collar"), c -> c.pen(DrawingInks.LIMIT, 0.3).line(x, centreY - half, x, centreY + half));
    }

    /** What lies beside the device that passes. */
    void beside(PictureBuilder g) {
        for (StillBody body : beside) {
            Rest rest = Rest.atCeiling(topOf(body));
            g.group(Frame.named(body.id()).withTooltip(Printable.line(body.name())), s -> body.bands().stream()
                    .filter(band -> band.diameter().isPresent()).forEach(band -> painter.still(s, band, rest)));
        }
    }

    /** Labels for what lies beside. */
    List<Label> labels() {
        List<Label> labels = new ArrayList<>();
        for (StillBody body : beside) {
            double left = axis.x(body.bands().get(0).from());
            double right = axis.x(body.bands().get(body.bands().size() - 1).to());
            labels.add(new Label(body.name(), body.name(), (left + right) / 2, topOf(body) + 0.3, Ink.MUTED));
        }
        return labels;
    }

    /** One below the other, from the ceiling on, but none below the floor: across they lie side by side. */
    private double topOf(StillBody body) {
        double above = beside.subList(0, beside.indexOf(body)).stream().mapToDouble(StillBody::thickest).sum();
        return Math.max(ceilingY, Math.min(ceilingY + above * painter.radial(),
                floor.yMm() - body.thickest() * painter.radial()));
    }
}
