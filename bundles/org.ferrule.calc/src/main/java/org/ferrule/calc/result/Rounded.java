/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.result;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Decimal numbers from exact lengths and from doubles, rounded in a stated direction. */
public final class Rounded {
    /** A nanometre. */
    private static final int DECIMALS_OF_MM = 6;
    private static final int DIGITS = 6;
    /** Beyond, a double holds rounding errors of its own, which are no reason to go up or down. */
    private static final MathContext MEANT = new MathContext(12, RoundingMode.HALF_EVEN);

    private Rounded() {
    }

    /** Returns millimetres with at most six decimals. */
    public static BigDecimal mm(Length length, RoundingMode rounding) {
        return in(LengthUnit.MILLIMETRE, length, rounding);
    }

    /** Returns units with as many decimals as resolve a nanometre. */
    public static BigDecimal in(LengthUnit unit, Length length, RoundingMode rounding) {
        int decimals = unit == LengthUnit.INCH ? DECIMALS_OF_MM + 1 : DECIMALS_OF_MM;
        return plain(length.in(unit, decimals, rounding));
    }

    /**
     * Returns a number with six digits.
     *
     * @throws NumberFormatException if it is not finite
     */
    public static BigDecimal digits(double value, RoundingMode rounding) {
        return plain(new BigDecimal(value, MEANT).round(new MathContext(DIGITS, rounding)));
    }

    /**
     * Returns a number with some decimals.
     *
     * @throws NumberFormatException if it is not finite
     */
    public static BigDecimal decimals(double value, int decimals, RoundingMode rounding) {
        return plain(new BigDecimal(value, MEANT).setScale(decimals, rounding));
    }

    /** Returns the same number without zeros at its end. */
    public static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
