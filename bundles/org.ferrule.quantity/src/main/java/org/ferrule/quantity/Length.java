/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An exact length or diameter: a whole number of thirds of a nanometre. Millimetres and inches with up to six decimals
 * and French sizes with up to six decimals are held without rounding, so sums, differences and comparisons are exact
 * and do not depend on the unit in which a figure was printed. May be negative (a clearance, an offset). Sums that
 * leave the range (about 3 million kilometres) throw {@link ArithmeticException}.
 *
 * @param thirdNanometres the length in thirds of a nanometre
 */
public record Length(long thirdNanometres) implements Comparable<Length> {

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    /**
     * Returns a length from a decimal number, rounded half-even at a third of a nanometre.
     *
     * @throws ArithmeticException if the length is out of range
     */
    public static Length of(BigDecimal value, LengthUnit unit) {
        BigDecimal thirds = value.multiply(BigDecimal.valueOf(unit.thirdNanometres()));
        return new Length(thirds.setScale(0, RoundingMode.HALF_EVEN).longValueExact());
    }

    /**
     * Returns a length from a decimal number with a point, such as {@code "0.070"}.
     *
     * @throws NumberFormatException if the text is not a number
     */
    public static Length of(String decimal, LengthUnit unit) {
        return of(new BigDecimal(decimal), unit);
    }

    /**
     * Returns the length nearest to a number of millimetres.
     *
     * @throws IllegalArgumentException if the number is not finite
     */
    public static Length ofMm(double mm) {
        if (!Double.isFinite(mm)) {
            throw new IllegalArgumentException("not a length in mm: " + mm);
        }
        return of(new BigDecimal(mm), LengthUnit.MILLIMETRE);
    }

    /** Returns the nearest double number of millimetres. */
    public double mm() {
        return in(LengthUnit.MILLIMETRE);
    }

    /** Returns the nearest double number of units. */
    public double in(LengthUnit unit) {
        return (double) thirdNanometres / unit.thirdNanometres();
    }

    /** Returns the number of units with the given decimals, rounded as told. */
    public BigDecimal in(LengthUnit unit, int decimals, RoundingMode rounding) {
        return BigDecimal.valueOf(thirdNanometres).divide(BigDecimal.valueOf(unit.thirdNanometres()), decimals,
                rounding);
    }

    /** Returns the sum, exactly. */
    public Length plus(Length other) {
        return new Length(Math.addExact(thirdNanometres, other.thirdNanometres));
    }

    /** Returns the difference, exactly. */
    public Length minus(Length other) {
        return new Length(Math.subtractExact(thirdNanometres, other.thirdNanometres));
    }

    /** Returns this length with the other sign. */
    public Length negated() {
        return new Length(Math.negateExact(thirdNanometres));
    }

    /** Returns a whole multiple, exactly. */
    public Length times(long factor) {
        return new Length(Math.multiplyExact(thirdNanometres, factor));
    }

    /**
     * Returns a part, rounded half-even at a third of a nanometre.
     *
     * @throws ArithmeticException if the divisor is zero
     */
    public Length dividedBy(long divisor) {
        BigDecimal quotient = BigDecimal.valueOf(thirdNanometres).divide(BigDecimal.valueOf(divisor), 0,
                RoundingMode.HALF_EVEN);
        return new Length(quotient.longValueExact());
    }

    /** Returns the smaller of the two. */
    public Length min(Length other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** Returns the larger of the two. */
    public Length max(Length other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** Returns the size without its sign. */
    public Length abs() {
        return isNegative() ? negated() : this;
    }

    /** Tells whether this is below zero. */
    public boolean isNegative() {
        return thirdNanometres < 0;
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(thirdNanometres, other.thirdNanometres);
    }

    /** Returns the length in millimetres for messages and debugging, such as {@code 1.78 mm}. */
    @Override
    public String toString() {
        return LengthFormat.faithful(LengthUnit.MILLIMETRE).format(this);
    }
}
