/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.quantity.Length;

/**
 * The pairs of stations (x, s) at which a stretch of a device lies in a stretch of a lumen while its leading end
 * travels a given distance: a rectangle with x + s at most the travel. In thirds of a nanometre.
 */
record Window(long x0, long x1, long s0, long s1, long travel) {

    static Window of(Stretch lumen, Stretch device, Length travel) {
        return new Window(lumen.from().thirdNanometres(), lumen.to().thirdNanometres(),
                device.from().thirdNanometres(), device.to().thirdNanometres(), travel.thirdNanometres());
    }

    /** The last station of the device that comes into it. */
    long lastS() {
        return Math.min(s1, travel - x0);
    }

    /** Corners in order around the polygon. */
    List<long[]> corners() {
        List<long[]> corners = new ArrayList<>(5);
        corners.add(new long[] { x0, s0 });
        corners.add(new long[] { Math.min(x1, travel - s0), s0 });
        if (x1 + s1 <= travel) {
            corners.add(new long[] { x1, s1 });
        } else {
            addCutCorners(corners);
        }
        corners.add(new long[] { x0, lastS() });
        return corners;
    }

    private void addCutCorners(List<long[]> corners) {
        if (x1 + s0 < travel) {
            corners.add(new long[] { x1, travel - x1 });
        }
        if (x0 + s1 < travel) {
            corners.add(new long[] { travel - s1, s1 });
        }
    }

    /** That many windows side by side along the lumen; those that the device does not come to are left out. */
    List<Window> strips(int count) {
        List<Window> strips = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            long from = x0 + (x1 - x0) / count * i;
            long to = i + 1 == count ? x1 : x0 + (x1 - x0) / count * (i + 1);
            if (i == 0 || from + s0 < travel) {
                strips.add(new Window(from, to, s0, s1, travel));
            }
        }
        return strips;
    }
}
