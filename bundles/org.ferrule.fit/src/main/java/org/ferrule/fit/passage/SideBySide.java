/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.ferrule.geometry.Body;
import org.ferrule.geometry.DiscSet;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.FreeDisc;
import org.ferrule.geometry.Stadium;
import org.ferrule.quantity.Length;

/** The smallest circle round bodies. */
final class SideBySide {
    private static final int MOST_DISCS = 16;

    private SideBySide() {
    }

    /** The smallest circle; where there is no closed form, one that is large enough, without places. */
    static Enclosure enclosure(List<Body> sorted) {
        if (sorted.stream().allMatch(FreeDisc.class::isInstance) && sorted.size() <= MOST_DISCS) {
            return EnclosingCircle.discs(sorted.stream().map(b -> ((FreeDisc) b).diameter()).toList());
        }
        if (sorted.size() == 1) {
            return alone(sorted.get(0));
        }
        if (sorted.size() == 2 && sorted.get(1) instanceof FreeDisc disc) {
            return sorted.get(0) instanceof Stadium stadium ? stadium.with(disc.diameter())
                    : ((DiscSet) sorted.get(0)).with(disc.diameter());
        }
        return bounds(sorted);
    }

    private static Enclosure alone(Body body) {
        if (body instanceof FreeDisc disc) {
            return EnclosingCircle.discs(disc.diameter());
        }
        return body instanceof Stadium stadium ? stadium.enclosure() : ((DiscSet) body).enclosure();
    }

    private static Enclosure bounds(List<Body> sorted) {
        List<Length> discs = new ArrayList<>(sorted.stream().map(b -> alone(b).upperDiameter()).toList());
        List<Length> free = sorted.stream().filter(FreeDisc.class::isInstance).limit(MOST_DISCS)
                .map(b -> ((FreeDisc) b).diameter()).toList();
        Length lower = EnclosingCircle.discs(free).lowerDiameter();
        for (Body body : sorted) {
            lower = lower.max(alone(body).lowerDiameter());
        }
        while (discs.size() > MOST_DISCS) {
            discs.sort(Comparator.reverseOrder());
            discs.add(discs.remove(discs.size() - 1).plus(discs.remove(discs.size() - 1)));
        }
        return new Enclosure(lower, EnclosingCircle.discs(discs).upperDiameter(), List.of());
    }
}
