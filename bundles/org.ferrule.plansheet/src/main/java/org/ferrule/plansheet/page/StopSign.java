/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import org.ferrule.picture.Box;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;

/** A ring with a bar: here it ends. */
final class StopSign {
    private static final double RING = 0.4;
    private static final double BAR = 0.5;

    private StopSign() {
    }

    static void draw(PictureBuilder g, Point at, double sizeMm) {
        g.noFill().pen(Ink.TEXT, 0.25).circle(at.xMm(), at.yMm(), sizeMm * RING);
        double width = sizeMm * BAR;
        g.noPen().fill(Ink.TEXT).rect(new Box(at.xMm() - width / 2, at.yMm() - 0.2, width, 0.4));
    }
}
