/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.picture.Element;
import org.ferrule.picture.Ellipse;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Rect;
import org.junit.jupiter.api.Test;

class StopSignTest {

    @Test
    void barLiesAcrossTheMiddleOfTheRingAndWithinIt() {
        Point middle = new Point(10, 20);
        PictureBuilder picture = new PictureBuilder();
        StopSign.draw(picture, middle, 4);
        List<Element> drawn = picture.elements();
        Ellipse ring = (Ellipse) drawn.get(0);
        Rect bar = (Rect) drawn.get(1);
        assertEquals(middle, ring.centre());
        assertEquals(0, middle.distanceMm(bar.box().centre()), 1e-12);
        assertTrue(bar.box().widthMm() < 2 * ring.radiusXMm() && ring.radiusXMm() < 2);
        assertTrue(bar.box().widthMm() > ring.radiusXMm(), "long enough to be seen as a bar");
    }
}
