/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;

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

    /** The smaller of two, end by end. */
    public Figure min(Figure other) {
        return new Figure(low.min(other.low), centre.min(other.centre), high.min(other.high),
                centreAssumed || other.centreAssumed);
    }

    /** The larger of two, end by end. */
    public Figure max(Figure other) {
        return new Figure(low.max(other.low), centre.max(other.centre), high.max(other.high),
                centreAssumed || other.centreAssumed);
    }

    /**
     * The figure on the way to another, for a taper; ends are interpolated one by one, exactly but for the rounding.
     *
     * @param part how far it is on the way, from 0 to {@code whole}
     * @param whole how long the way is, more than 0
     * @param rounding at a third of a nanometre: down for a lumen, up for what lies in it
     */
    public Figure towards(Figure other, Length part, Length whole, RoundingMode rounding) {
        return new Figure(between(low, other.low, part, whole, rounding),
                between(centre, other.centre, part, whole, rounding),
                between(high, other.high, part, whole, rounding), centreAssumed || other.centreAssumed);
    }

    private static Length between(Length a, Length b, Length part, Length whole, RoundingMode rounding) {
        BigDecimal product = BigDecimal.valueOf(b.minus(a).thirdNanometres())
                .multiply(BigDecimal.valueOf(part.thirdNanometres()));
        BigDecimal rise = product.divide(BigDecimal.valueOf(whole.thirdNanometres()), 0, rounding);
        return a.plus(new Length(rise.longValueExact()));
    }
}
