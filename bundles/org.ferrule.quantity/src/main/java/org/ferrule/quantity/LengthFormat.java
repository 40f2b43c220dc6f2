/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes lengths in one unit with a fixed number of decimals, in a stated direction of rounding. The decimal sign is
 * always a point and the digits are always 0 to 9, whatever the locale. A length that is not zero is never written as
 * zero: it becomes {@code <0.01 mm}, or {@code >-0.01 mm} when negative.
 */
public final class LengthFormat {
    /** Twelve decimals resolve a third of a nanometre in every unit. */
    private static final int MOST_DECIMALS = 12;
    private static final int FAITHFUL = -1;

    private final LengthUnit unit;
    private final int decimals;
    private final RoundingMode rounding;

    private LengthFormat(LengthUnit unit, int decimals, RoundingMode rounding) {
        this.unit = unit;
        this.decimals = decimals;
        this.rounding = rounding;
    }

    /**
     * Returns a format with a rounding of one's own.
     *
     * @throws IllegalArgumentException if the decimals are not 0 to 12, or the mode is UNNECESSARY
     */
    public static LengthFormat of(LengthUnit unit, int decimals, RoundingMode rounding) {
        if (decimals < 0 || decimals > MOST_DECIMALS || rounding == RoundingMode.UNNECESSARY) {
            throw new IllegalArgumentException("decimals " + decimals + ", rounding " + rounding
                    + ": 0 to " + MOST_DECIMALS + " decimals and a direction are needed");
        }
        return new LengthFormat(unit, decimals, rounding);
    }

    /** Returns a format for clearances: toward minus infinity, so that no clearance ever looks larger than it is. */
    public static LengthFormat clearance(LengthUnit unit, int decimals) {
        return of(unit, decimals, RoundingMode.FLOOR);
    }

    /** Returns a format for outer diameters: upward, so that no device ever looks thinner than it is. */
    public static LengthFormat atLeast(LengthUnit unit, int decimals) {
        return of(unit, decimals, RoundingMode.CEILING);
    }

    /** Returns a format for inner diameters: downward, so that no lumen ever looks wider than it is. */
    public static LengthFormat atMost(LengthUnit unit, int decimals) {
        return of(unit, decimals, RoundingMode.FLOOR);
    }

    /** Returns a format for figures shown for orientation: half-even. */
    public static LengthFormat plain(LengthUnit unit, int decimals) {
        return of(unit, decimals, RoundingMode.HALF_EVEN);
    }

    /** Returns a format with as few decimals as give exactly the same length when read again. */
    public static LengthFormat faithful(LengthUnit unit) {
        return new LengthFormat(unit, FAITHFUL, RoundingMode.HALF_EVEN);
    }

    /** Returns number and unit, such as {@code 1.78 mm}. */
    public String format(Length length) {
        return number(length) + " " + unit.symbol();
    }

    /** Returns the number alone, such as {@code 1.78}. */
    public String number(Length length) {
        if (decimals == FAITHFUL) {
            return faithfulNumber(length);
        }
        BigDecimal number = length.in(unit, decimals, rounding);
        boolean vanished = number.signum() == 0 && !length.equals(Length.ZERO);
        return vanished ? smallest(length) : number.toPlainString();
    }

    private String smallest(Length length) {
        String step = BigDecimal.ONE.movePointLeft(decimals).toPlainString();
        return length.isNegative() ? ">-" + step : "<" + step;
    }

    private String faithfulNumber(Length length) {
        BigDecimal number = length.in(unit, 0, rounding);
        for (int digits = 1; !Length.of(number, unit).equals(length); digits++) {
            number = length.in(unit, digits, rounding);
        }
        return number.toPlainString();
    }
}
