/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.drawing;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.look.Scheme;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;

/** Draws the bodies of devices: what is new with a bold outline and a hatch, what is out with a broken one. */
final class PartPainter {
    private static final double THIN_MM = 0.22;
    private static final double BOLD_MM = 0.55;
    private static final double WIRE_MM = 0.45;
    private static final double NEW_WIRE_MM = 0.95;
    private static final double WALL = 0.26;

    private final PictureBuilder g;
    private final Scheme scheme;
    private final Rows rows;
    private final Box room;
    private final double rowMm;
    private final double axisMm;

    /**
     * Prepares to draw.
     *
     * @param room of the bodies, without labels
     * @param axisMm height of the main wire
     */
    PartPainter(PictureBuilder g, Scheme scheme, Rows rows, Box room, double rowMm, double axisMm) {
        this.g = g;
        this.scheme = scheme;
        this.rows = rows;
        this.room = room;
        this.rowMm = rowMm;
        this.axisMm = axisMm;
    }

    double x(double share) {
        return room.xMm() + share * room.widthMm();
    }

    double y(double row) {
        return axisMm + row * rowMm;
    }

    void draw(Part part) {
        g.group(Frame.named("part:" + part.place()), inner -> new PartPainter(inner, scheme, rows, room, rowMm,
                axisMm).body(part));
    }

    private void body(Part part) {
        switch (part.place().body()) {
            case TUBE -> tube(part);
            case WIRE -> wire(part);
            case BALLOON -> balloon(part);
            case BOX -> valve(part);
        }
    }

    private void tube(Part part) {
        double top = y(rows.upper(part.place()));
        double bottom = y(rows.lower(part.place()));
        double left = x(part.place().hub());
        Box tube = new Box(left, top, x(part.place().tip()) - left, bottom - top);
        if (part.place() == Part.Place.EXTENSION) {
            g.pen(outline(part)).line(x(Part.Place.MICROCATHETER.hub()), top, left, top);
        }
        if (part.state() != Part.State.OUT) {
            g.noPen().fill(Fill.of(ink(DrawingInks.LUMEN))).rect(tube);
        }
        g.pen(outline(part)).fill(wall(part));
        double wall = rowMm * WALL;
        g.rect(left, top - wall / 2, tube.widthMm(), wall).rect(left, bottom - wall / 2, tube.widthMm(), wall);
    }

    private Fill fill(Part part) {
        return switch (part.state()) {
            case THERE -> Fill.of(ink(DrawingInks.LUMEN));
            case NEW -> Fill.of(ink(DrawingInks.LUMEN),
                    Hatch.of(Hatch.Pattern.RISING, ink(DrawingInks.TOLERANCE)));
            case OUT -> Fill.NONE;
        };
    }

    /** The wall of a tube: solid where it is new, pale where it was there. */
    private Fill wall(Part part) {
        return switch (part.state()) {
            case THERE -> Fill.of(ink(DrawingInks.SHAFT));
            case NEW -> Fill.of(ink(DrawingInks.SHAFT_LINE));
            case OUT -> Fill.NONE;
        };
    }

    private void wire(Part part) {
        double y = y(rows.upper(part.place()));
        Stroke stroke = outline(part);
        g.pen(new Stroke(part.state() == Part.State.OUT ? stroke.ink() : ink(DrawingInks.WIRE_LINE),
                part.state() == Part.State.NEW ? NEW_WIRE_MM : WIRE_MM, stroke.dash(), Stroke.Ends.ROUND))
                .line(x(part.place().hub()), y, x(part.place().tip()), y);
    }

    private void balloon(Part part) {
        double y = y(rows.upper(part.place()));
        double left = x(part.place().hub());
        double width = x(part.place().tip()) - left;
        double height = rowMm * 0.8;
        g.pen(outline(part)).fill(fill(part)).roundRect(new Box(left, y - height / 2, width, height),
                Math.min(width, height) / 2);
    }

    private void valve(Part part) {
        double top = y(rows.upper(Part.Place.GUIDE)) - rowMm * 0.25;
        double bottom = y(rows.lower(Part.Place.GUIDE)) + rowMm * 0.25;
        double left = x(part.place().hub());
        g.pen(outline(part)).fill(Fill.of(ink(DrawingInks.SHAFT))).rect(left, top, x(part.place().tip()) - left,
                bottom - top);
    }

    private Stroke outline(Part part) {
        return switch (part.state()) {
            case THERE -> Stroke.of(ink(DrawingInks.SHAFT_LINE), THIN_MM);
            case NEW ->
                Stroke.of(ink(DrawingInks.SHAFT_LINE), part.place().body() == Part.Body.TUBE ? THIN_MM : BOLD_MM);
            case OUT -> Stroke.of(ink(Ink.MUTED), THIN_MM).dashed(Dash.of(1.0, 0.8));
        };
    }

    /** The lesion: plaque above and below the main wire. */
    void lesion() {
        double height = rowMm * 0.36;
        double gap = rowMm * 0.09;
        g.noPen().fill(Fill.of(ink(DrawingInks.WALL)));
        for (int side : new int[] { -1, 1 }) {
            double base = y(0) + side * (gap + height);
            double top = y(0) + side * gap;
            g.polygon(new Point(x(0.885), base), new Point(x(0.915), top), new Point(x(0.945), top),
                    new Point(x(0.975), base));
        }
    }

    private Ink ink(Ink ink) {
        return DrawingInks.in(scheme, ink);
    }
}
