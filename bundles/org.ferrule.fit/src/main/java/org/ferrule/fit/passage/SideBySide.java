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

/** The smallest circle round bodies, however many. */
final class SideBySide {
    /** More bodies would take a search of seconds; no lumen holds as many. */
    static final int MOST = 8;

    /** Round three discs the circle has a closed form. */
    private static final int CLOSED_FORM = 3;

    private SideBySide() {
    }

    /** A diameter that is enough, without a search: each body as round, the thinnest ones in line as one. */
    static Length enough(List<Body> bodies) {
        List<Length> discs = new ArrayList<>(bodies.stream().map(b -> b.enclosure().upperDiameter()).toList());
        while (discs.size() > CLOSED_FORM) {
            discs.sort(Comparator.reverseOrder());
            discs.add(discs.remove(discs.size() - 1).plus(discs.remove(discs.size() - 1)));
        }
        return EnclosingCircle.discs(discs).upperDiameter();
    }

    /** A diameter that is enough, plainly: each body as round, all in one line. */
    static Length inLine(List<Body> bodies) {
        Length sum = Length.ZERO;
        for (Body body : bodies) {
            sum = sum.plus(body.enclosure().upperDiameter());
        }
        return sum;
    }

    /** A diameter that is needed, plainly: that of the two thickest discs in line. */
    static Length twoThickest(List<Body> bodies) {
        Length first = Length.ZERO;
        Length second = Length.ZERO;
        for (Body body : bodies) {
            Length diameter = body instanceof FreeDisc disc ? disc.diameter() : Length.ZERO;
            second = second.max(first.min(diameter));
            first = first.max(diameter);
        }
        return first.plus(second);
    }

    /** A diameter that is needed, without a search: round the thickest discs alone. */
    static Length needed(List<Body> bodies) {
        return EnclosingCircle.discs(bodies.stream().filter(FreeDisc.class::isInstance)
                .map(b -> ((FreeDisc) b).diameter()).sorted(Comparator.reverseOrder()).limit(CLOSED_FORM).toList())
                .lowerDiameter();
    }

    /** The smallest circle; of very many bodies one that is large enough, without places. */
    static Enclosure enclosure(List<Body> bodies) {
        if (bodies.size() <= MOST) {
            return Packing.of(bodies);
        }
        Length rest = bodies.subList(MOST - 1, bodies.size()).stream().map(b -> b.enclosure().upperDiameter())
                .reduce(Length.ZERO, Length::plus);
        List<Body> inLine = new ArrayList<>(bodies.subList(0, MOST - 1));
        inLine.add(new FreeDisc(rest));
        return new Enclosure(Packing.of(bodies.subList(0, MOST)).lowerDiameter(), Packing.of(inLine).upperDiameter(),
                List.of());
    }
}
