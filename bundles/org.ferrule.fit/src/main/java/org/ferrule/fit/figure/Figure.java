/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.figure;

import org.ferrule.quantity.Length;

/**
 * A diameter as an interval: where a real part may lie.
 *
 * @param low the smallest, not above {@code centre}
 * @param centre the usual one
 * @param high the largest, not below {@code centre}
 * @param centreAssumed whether the label does not state the centre
 */
public record Figure(Length low, Length centre, Length high, boolean centreAssumed) {

    public Figure {
        if (low.compareTo(centre) > 0 || centre.compareTo(high) > 0) {
            throw new IllegalArgumentException("a figure's ends are out of order: " + low.mm() + " mm, " + centre.mm()
                    + " mm, " + high.mm() + " mm");
        }
    }

    /** A figure without any spread. */
    public static Figure exactly(Length value) {
        return new Figure(value, value, value, false);
    }

    /** The figure at a share of the way to another, for a taper; ends are interpolated one by one. */
    public Figure towards(Figure other, double share) {
        return new Figure(between(low, other.low, share), between(centre, other.centre, share),
                between(high, other.high, share), centreAssumed || other.centreAssumed);
    }

    private static Length between(Length a, Length b, double share) {
        return new Length(a.thirdNanometres()
                + Math.round(share * (b.thirdNanometres() - a.thirdNanometres())));
    }
}
