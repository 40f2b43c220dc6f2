/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import org.ferrule.chart.look.DrawingInks;
import org.ferrule.fit.figure.Figure;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Frame;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Stroke;

/**
 * What is seen within the outline of a shaft section that is not round.
 *
 * @param section the name of the section
 * @param from its left end in mm along the drawing
 * @param to its right end
 * @param seen what it is, and along which axis it is seen
 * @param figure how high it is
 * @param besideMm how far its middle lies above that of the shaft
 */
record InnerOutline(String section, double from, double to, Seen seen, Figure figure, double besideMm) {
    /** What can be seen. */
    enum Seen {
        HEIGHT, DISC_ALONG_X, DISC_ALONG_Y
    }

    private static final double LINE_MM = 0.2;

    boolean isDisc() {
        return seen != Seen.HEIGHT;
    }

    /** Both edges, dashed. */
    void paint(PictureBuilder g, AxialScale axis, double centreY, double radial) {
        g.group(Frame.named("inner:" + section), s -> {
            s.noFill().pen(Stroke.of(DrawingInks.SHAFT_LINE, LINE_MM).dashed(Dash.DASHED));
            for (int side : new int[] { -1, 1 }) {
                double y = centreY - (besideMm + side * figure.centre().mm() / 2) * radial;
                s.line(axis.x(from), y, axis.x(to), y);
            }
        });
    }
}
