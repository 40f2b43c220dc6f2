/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

import java.util.function.BiConsumer;

import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Stroke;

/**
 * Small shapes that keep their meaning in black and white. They are drawn in a square from -1 to 1, y downwards: a disc
 * is the device, lines around it are the lumen.
 */
public enum Glyph {
    /** A disc in a ring, with room around it. */
    SEATED((g, ink) -> g.noFill().pen(ink, 0.24).circle(0, 0, 0.86).noPen().fill(ink).circle(0, 0, 0.42)),
    /** A disc on a sheet of paper: somebody says so. */
    ON_PAPER((g, ink) -> g.noPen().fill(ink).circle(-0.14, 0.14, 0.42).noFill().pen(ink, 0.22)
            .path(Outline.from(-0.85, -0.85).lineTo(0.3, -0.85).lineTo(0.85, -0.3).lineTo(0.85, 0.85)
                    .lineTo(-0.85, 0.85).close())
            .path(Outline.from(0.3, -0.85).lineTo(0.3, -0.3).lineTo(0.85, -0.3))),
    /** A disc that touches the wall above and the wall below. */
    SQUEEZED((g, ink) -> g.noPen().fill(ink).circle(0, 0, 0.58).rect(-1, -0.86, 2, 0.27).rect(-1, 0.59, 2, 0.27)),
    /** A shaft that runs against a wall. */
    STOPPED((g, ink) -> g.noPen().fill(ink).rect(-1, -0.32, 1.32, 0.64).rect(0.32, -0.95, 0.5, 1.9)),
    /** A question in a broken ring. */
    ASKED((g, ink) -> g.noFill().pen(Stroke.of(ink, 0.18).dashed(Dash.of(0.4, 0.275))).circle(0, 0, 0.86)
            .pen(ink, 0.2).path(Outline.from(-0.28, -0.2).arc(0, -0.2, 0.28, 180, 240).lineTo(0, 0.24))
            .noPen().fill(ink).circle(0, 0.48, 0.13)),
    /** Two arrowheads that meet head-on. */
    HEAD_ON((g, ink) -> g.noPen().fill(ink)
            .polygon(new Point(-1, -0.75), new Point(-0.08, 0), new Point(-1, 0.75))
            .polygon(new Point(1, -0.75), new Point(0.08, 0), new Point(1, 0.75))),
    /** A triangle with an exclamation mark, as on labels (ISO 15223-1, from memory). */
    WARNING((g, ink) -> g.noFill().pen(Stroke.of(ink, 0.2).rounded())
            .polygon(new Point(0, -0.78), new Point(0.9, 0.8), new Point(-0.9, 0.8))
            .noPen().fill(ink).rect(-0.11, -0.3, 0.22, 0.56).circle(0, 0.5, 0.13)),
    /** A clock: what is shown is not the latest. */
    CLOCK((g, ink) -> g.noFill().pen(Stroke.of(ink, 0.2).rounded()).circle(0, 0, 0.85)
            .polyline(new Point(0, -0.5), new Point(0, 0.06), new Point(0.42, 0.3))),
    /** An arrow that turns back. */
    TURNED_BACK((g, ink) -> g.noFill().pen(ink, 0.24)
            .path(Outline.from(-0.4, 0.5).lineTo(0.35, 0.5).arc(0.35, -0.02, 0.52, 90, -180).lineTo(-0.4, -0.54))
            .noPen().fill(ink)
            .polygon(new Point(-0.3, -0.04), new Point(-0.3, 1.04), new Point(-1, 0.5)));

    private final BiConsumer<PictureBuilder, Ink> drawing;

    Glyph(BiConsumer<PictureBuilder, Ink> drawing) {
        this.drawing = drawing;
    }

    /** Draws it in an ink, in a square of a size around a place. */
    public void draw(PictureBuilder builder, Point centre, double sizeMm, Ink ink) {
        Frame frame = Frame.PLAIN.scaled(sizeMm / 2, sizeMm / 2).translated(centre.xMm(), centre.yMm());
        builder.group(frame, g -> drawing.accept(g, ink));
    }
}
