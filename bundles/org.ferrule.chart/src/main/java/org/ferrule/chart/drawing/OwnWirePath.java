/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Outline;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Stroke;

/**
 * The wire of a device along a drawing: inside the shaft up to its exit port, beside the shaft proximal to it.
 *
 * @param diameter in mm; absent when nobody says which wire it is
 * @param port where it leaves the shaft, along the drawing
 */
record OwnWirePath(Optional<Double> diameter, double port) {
    private static final double BEYOND_TIP_MM = 4;
    private static final double RISE_MM = 3;
    private static final double GUESS_MM = 0.36;
    private static final double LINE_MM = 0.25;

    /**
     * Where a wire runs inside a shaft, from the one before to here.
     *
     * @param until place along the drawing, going left
     * @param yMm on paper
     */
    record Level(double until, double yMm) {
    }

    /** The wire of a device with an exit port; empty where it has none. */
    static Optional<OwnWirePath> of(ReadDevice device, double tip) {
        return device.device().wireLumen().filter(lumen -> lumen.opening() == Lumen.Opening.SIDE_PORT)
                .map(lumen -> new OwnWirePath(device.wire().diameter().map(Figure::centre).map(l -> l.mm()),
                        tip - lumen.proximalAt().mm()));
    }

    /** How much room it takes beside the shaft, in mm. */
    double room() {
        return diameter.orElse(GUESS_MM);
    }

    /**
     * Paints it.
     *
     * @param shaft from left to right
     * @param inside where the wire runs inside the shaft, from its tip to its port
     * @param tip where the distal tip of the shaft lies
     */
    void paint(PictureBuilder g, AxialScale axis, BodyPainter painter, List<Band> shaft, Rest rest, List<Level> inside,
            double tip) {
        double width = Math.max(3 * LINE_MM, room() * painter.radial());
        Outline path = path(axis, painter, shaft, rest, inside, tip);
        g.group(Frame.named("wire"), w -> {
            w.noFill();
            if (diameter.isPresent()) {
                w.pen(DrawingInks.WIRE_LINE, width).path(path);
                w.pen(DrawingInks.WIRE, width - 2 * LINE_MM).path(path);
            } else {
                w.pen(Stroke.of(DrawingInks.WIRE_LINE, LINE_MM).dashed(Dash.DASHED)).path(path);
            }
        });
    }

    /** From beyond the tip to the port, up beside the shaft, and along it, in slopes where its level changes. */
    private Outline path(AxialScale axis, BodyPainter painter, List<Band> shaft, Rest rest, List<Level> inside,
            double tip) {
        List<Level> levels = new ArrayList<>(inside);
        for (int i = shaft.size() - 1; i >= 0; i--) {
            Band band = shaft.get(i);
            if (band.overlaps(axis.from(), port)) {
                levels.add(new Level(Math.max(band.from(), axis.from()),
                        rest.top(height(band, painter)) - room() * painter.radial() / 2));
            }
        }
        double x = axis.x(tip);
        double y = levels.get(0).yMm;
        Outline path = Outline.from(x + BEYOND_TIP_MM, y);
        for (Level level : levels) {
            double end = axis.x(level.until);
            double risen = level.yMm == y ? x : Math.max(end, x - RISE_MM);
            path.curveTo((x + risen) / 2, y, (x + risen) / 2, level.yMm, risen, level.yMm).lineTo(end, level.yMm);
            x = end;
            y = level.yMm;
        }
        return path;
    }

    private double height(Band band, BodyPainter painter) {
        double place = Math.min(port, band.middle());
        return band.figureAt(place).map(f -> f.centre().mm()).orElse(GUESS_MM) * painter.radial();
    }
}
