/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ferrule.quantity.Length;

/** A disc without any size beside others: it lies at the rim of their circle, as far from them as may be. */
final class PointAtRim {
    private static final int DIRECTIONS = 64;

    private PointAtRim() {
    }

    /** Returns the same circle with one more disc, the last one. */
    static Enclosure add(Enclosure others) {
        List<PlacedDisc> discs = new ArrayList<>(others.discs());
        discs.add(IntStream.range(0, DIRECTIONS)
                .mapToObj(i -> point(others.upperDiameter().mm() / 2, 2 * Math.PI * i / DIRECTIONS))
                .max(Comparator.comparingDouble(point -> room(point, others.discs()))).orElseThrow());
        return new Enclosure(others.lowerDiameter(), others.upperDiameter(), discs);
    }

    private static PlacedDisc point(double radius, double angle) {
        // A hair inside, so that rounding does not bring it outside.
        double distance = radius * (1 - 1e-15);
        return new PlacedDisc(distance * Math.cos(angle), distance * Math.sin(angle), Length.ZERO);
    }

    private static double room(PlacedDisc point, List<PlacedDisc> others) {
        return others.stream().mapToDouble(point::gapMm).min().orElse(0);
    }
}
