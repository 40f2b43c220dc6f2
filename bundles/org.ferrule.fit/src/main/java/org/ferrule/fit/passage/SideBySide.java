/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.ferrule.geometry.Body;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.FreeDisc;
import org.ferrule.geometry.Packing;
import org.ferrule.quantity.Length;

/** The smallest circle round bodies. */
final class SideBySide {
    private static final int MOST_BODIES = 16;

    private SideBySide() {
    }

    /** The smallest circle; round more bodies than a search can place, one that is large enough, without places. */
    static Enclosure enclosure(List<Body> sorted) {
        return sorted.size() <= MOST_BODIES ? Packing.of(sorted) : bounds(sorted);
    }

    private static Enclosure bounds(List<Body> sorted) {
        List<Length> discs = new ArrayList<>(sorted.stream().map(b -> b.enclosure().upperDiameter()).toList());
        List<Length> free = sorted.stream().filter(FreeDisc.class::isInstance).limit(MOST_BODIES)
                .map(b -> ((FreeDisc) b).diameter()).toList();
        Length lower = EnclosingCircle.discs(free).lowerDiameter();
        for (Body body : sorted) {
            lower = lower.max(body.enclosure().lowerDiameter());
        }
        while (discs.size() > MOST_BODIES) {
            discs.sort(Comparator.reverseOrder());
            discs.add(discs.remove(discs.size() - 1).plus(discs.remove(discs.size() - 1)));
        }
        return new Enclosure(lower, EnclosingCircle.discs(discs).upperDiameter(), List.of());
    }
}
