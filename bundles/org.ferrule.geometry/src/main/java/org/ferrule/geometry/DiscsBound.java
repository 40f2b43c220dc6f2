/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.List;
import org.ferrule.quantity.Length;

/** What is proved of the smallest circle round discs: the best of several lower bounds. */
final class DiscsBound {
    /** What rounding may leave between the bounds, in thirds of a nanometre. */
    static final Length ROUNDING = new Length(2);

    private final Length simple;
    private final RingBound ring;

    /**
     * Prepares the bounds.
     *
     * @param falling discs in falling size
     * @param known a bound that is already known
     */
    DiscsBound(List<Length> falling, Length known) {
        Length three = EnclosingCircle.discs(falling.subList(0, Math.min(3, falling.size()))).lowerDiameter();
        simple = known.max(three).max(EqualDiscs.lower(falling)).max(area(falling));
        ring = new RingBound(falling);
    }

    private static Length area(List<Length> discs) {
        double squares = discs.stream().mapToDouble(Length::thirdNanometres).map(d -> d * d).sum();
        return Bounds.down(Math.sqrt(squares));
    }

    /** Tells whether a circle that was found is the smallest one, but for rounding. */
    boolean isLeast(Length found) {
        return excludes(found.minus(ROUNDING));
    }

    /** Tells whether it is proved that no circle of that diameter holds the discs. */
    boolean excludes(Length diameter) {
        return diameter.compareTo(simple) < 0 || ring.excludes(diameter);
    }

    /** Returns a diameter below which no circle encloses the discs, given one that does. */
    Length lower(Length upper) {
        long excluded = simple.thirdNanometres() - 1;
        long open = upper.thirdNanometres();
        while (open - excluded > 1) {
            long middle = (excluded + open) / 2;
            if (ring.excludes(new Length(middle))) {
                excluded = middle;
            } else {
                open = middle;
            }
        }
        return simple.max(new Length(excluded)).min(upper);
    }
}
