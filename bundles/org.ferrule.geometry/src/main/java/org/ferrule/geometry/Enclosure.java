/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.List;
import org.ferrule.quantity.Length;

/**
 * The smallest circle round some discs: its diameter is proved to lie between two bounds, and the discs are placed as
 * they lie in the circle of the upper one.
 *
 * @param lowerDiameter no circle below this diameter encloses the discs; rounded down
 * @param upperDiameter a circle of this diameter encloses the discs; rounded up, so always use it to say "it fits"
 * @param discs the discs in the order in which they were given, round the centre of the circle
 */
public record Enclosure(Length lowerDiameter, Length upperDiameter, List<PlacedDisc> discs) {

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if the lower bound exceeds the upper one
     */
    public Enclosure {
        if (lowerDiameter.compareTo(upperDiameter) > 0) {
            throw new IllegalArgumentException("bounds reversed: " + lowerDiameter + " > " + upperDiameter);
        }
        discs = List.copyOf(discs);
    }

    /** Tells whether both bounds are the same, which is so when the diameter is a plain sum. */
    public boolean isExact() {
        return lowerDiameter.equals(upperDiameter);
    }

    /** Returns what the bounds leave open: often zero, or a third of a nanometre where only a root was rounded. */
    public Length gap() {
        return upperDiameter.minus(lowerDiameter);
    }
}
