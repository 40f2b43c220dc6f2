/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.ferrule.quantity.Length;

/**
 * Two lengths that enclose a number: the one next below and the one next above.
 *
 * @param lower not above the number
 * @param upper not below the number
 */
record Bounds(Length lower, Length upper) {
    /** Relative error of a few dozen operations on doubles, with a wide reserve. */
    private static final double MARGIN = 1e-13;

    static Bounds exactly(Length length) {
        return new Bounds(length, length);
    }

    /** Encloses numerator/denominator thirds of a nanometre; the denominator is positive. */
    static Bounds ofQuotient(BigInteger numerator, BigInteger denominator) {
        return new Bounds(quotient(numerator, denominator, RoundingMode.FLOOR),
                quotient(numerator, denominator, RoundingMode.CEILING));
    }

    /** Encloses (summand + sqrt(radicand))/denominator thirds of a nanometre, exactly; the denominator is positive. */
    static Bounds ofRoot(BigInteger summand, BigInteger radicand, BigInteger denominator) {
        BigInteger[] root = radicand.sqrtAndRemainder();
        BigInteger below = summand.add(root[0]);
        BigInteger above = root[1].signum() == 0 ? below : below.add(BigInteger.ONE);
        return new Bounds(quotient(below, denominator, RoundingMode.FLOOR),
                quotient(above, denominator, RoundingMode.CEILING));
    }

    /** Returns a length that is not below the number of thirds of a nanometre, which was computed with doubles. */
    static Length up(double thirdNanometres) {
        return new Length((long) Math.ceil(thirdNanometres * (1 + MARGIN)));
    }

    /** Returns a length that is not above the number of thirds of a nanometre, which was computed with doubles. */
    static Length down(double thirdNanometres) {
        return new Length((long) Math.floor(thirdNanometres * (1 - MARGIN)));
    }

    private static Length quotient(BigInteger numerator, BigInteger denominator, RoundingMode rounding) {
        BigDecimal quotient = new BigDecimal(numerator).divide(new BigDecimal(denominator), 0, rounding);
        return new Length(quotient.longValueExact());
    }
}
