/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Stroke;

/** Paints the bodies of a stack: lengths to one scale and diameters to another. */
final class NestedPainter {
    private static final double THIN_MM = 0.18;
    private static final double UNKNOWN_MM = 1;
    private static final double COLLAR_MM = 0.45;

    private final Box room;
    private final double fromMm;
    private final double lengthwise;
    private final double across;

    /**
     * A painter.
     *
     * @param room for the bodies
     * @param fromMm the station at the left edge
     * @param toMm the station at the right edge
     * @param thickestMm the largest diameter
     */
    NestedPainter(Box room, double fromMm, double toMm, double thickestMm) {
        this.room = room;
        this.fromMm = fromMm;
        this.lengthwise = room.widthMm() / (toMm - fromMm);
        this.across = room.heightMm() / thickestMm;
    }

    /** How many times larger diameters are drawn than lengths. */
    double exaggeration() {
        return across / lengthwise;
    }

    double x(double stationMm) {
        return Math.max(room.xMm(), Math.min(room.rightMm(), room.xMm() + (stationMm - fromMm) * lengthwise));
    }

    double y(double belowAxisMm) {
        return room.yMm() + room.heightMm() / 2 + belowAxisMm * across;
    }

    /** The height of the upper edge of a body at its tip. */
    double upperWallAtTip(NestedBody body) {
        double thickness = body.shaft().stream().filter(s -> s.from().mm() <= 0).map(NestedPainter::distal).findFirst()
                .orElse(body.thicknessMm());
        return y(body.offsetMm() - thickness / 2) + THIN_MM;
    }

    void draw(PictureBuilder g, NestedBody body) {
        boolean wire = body.device().kind() == DeviceKind.GUIDEWIRE;
        for (Stretch stretch : body.shaft()) {
            Stroke line = Stroke.of(wire ? DrawingInks.WIRE_LINE : DrawingInks.SHAFT_LINE, THIN_MM);
            g.pen(stretch.diameter().isPresent() ? line : line.dashed(Dash.of(0.8, 0.6)))
                    .fill(wire ? DrawingInks.WIRE : DrawingInks.SHAFT);
            double offset = isRod(body, stretch) ? body.rodOffsetMm() : body.offsetMm();
            area(g, body.tipMm() - stretch.to().mm(), proximal(stretch), body.tipMm() - stretch.from().mm(),
                    distal(stretch), offset);
        }
        body.lumen().ifPresent(lumen -> {
            double entry = body.tipMm() - lumen.proximalAt().mm();
            g.pen(DrawingInks.WALL, THIN_MM).fill(DrawingInks.LUMEN);
            for (Stretch bore : body.read().bore(lumen)) {
                area(g, entry + bore.from().mm(), distal(bore), entry + bore.to().mm(), proximal(bore),
                        body.offsetMm());
            }
        });
        body.collarMm().ifPresent(collar -> collar(g, body, collar));
    }

    /** What lies proximal to a collar. */
    private static boolean isRod(NestedBody body, Stretch stretch) {
        return body.collarMm().filter(collar -> body.tipMm() - stretch.from().mm() <= collar).isPresent();
    }

    private static double distal(Stretch stretch) {
        return stretch.diameter().map(t -> t.start()).map(Figure::centre).map(l -> l.mm()).orElse(UNKNOWN_MM);
    }

    private static double proximal(Stretch stretch) {
        return stretch.diameter().map(t -> t.end()).map(Figure::centre).map(l -> l.mm()).orElse(UNKNOWN_MM);
    }

    /** From its nearer end on the left to its farther one. */
    private void area(PictureBuilder g, double nearer, double nearerMm, double farther, double fartherMm,
            double offset) {
        if (farther <= fromMm || x(nearer) >= x(farther)) {
            return;
        }
        double shown = Math.max(nearer, fromMm);
        double left = nearerMm + (fartherMm - nearerMm) * (shown - nearer) / (farther - nearer);
        g.path(Outline.from(x(shown), y(offset - left / 2)).lineTo(x(farther), y(offset - fartherMm / 2))
                .lineTo(x(farther), y(offset + fartherMm / 2)).lineTo(x(shown), y(offset + left / 2)).close());
    }

    private void collar(PictureBuilder g, NestedBody body, double collar) {
        double half = body.thicknessMm() / 2;
        g.pen(DrawingInks.LIMIT, COLLAR_MM).noFill();
        g.line(x(collar), y(body.offsetMm() - half), x(collar), y(body.offsetMm() + half));
    }

    /** A valve at the hub, which lies beyond the left edge. */
    void valve(PictureBuilder g, double thickestMm) {
        Box box = new Box(room.xMm() - 2.2, y(-thickestMm / 2) - 0.8, 1.6,
                y(thickestMm / 2) - y(-thickestMm / 2) + 1.6);
        g.pen(DrawingInks.SHAFT_LINE, THIN_MM).fill(DrawingInks.WALL).roundRect(box, 0.4);
    }

    /** The edge at which lengths are left out. */
    void edge(PictureBuilder g) {
        g.pen(Stroke.of(Ink.MUTED, THIN_MM).dashed(Dash.of(0.6, 0.6))).noFill().line(room.xMm(), room.yMm() - 0.5,
                room.xMm(), room.bottomMm() + 0.5);
    }
}
