/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;

/** One printed number with its unit, of whatever quantity. */
interface Printed {

    /** Returns the token of the number. */
    Token number();

    /** Returns the exact size of the unit, in the base unit of the quantity. */
    BigDecimal unitSize();

    /** Returns the symbol of the unit. */
    String unitSymbol();

    default int start() {
        return number().start();
    }

    default int end() {
        return number().end();
    }

    default BigDecimal value() {
        return new BigDecimal(number().text());
    }

    default BigDecimal base() {
        return value().multiply(unitSize());
    }

    default boolean hasDecimals() {
        return value().scale() > 0;
    }

    /** Returns half a unit of the last printed digit in the base unit: as much as rounding may have changed. */
    default BigDecimal halfLastPlace() {
        return new BigDecimal("0.5").movePointLeft(value().scale()).multiply(unitSize());
    }

    /**
     * Tells whether a second figure says the same: it is this one rounded to the second's last digit, or, where this
     * one has decimals, the other way round. Without decimals this one is exact: 6 Fr does not mean 5.5 to 6.5 Fr.
     */
    default boolean agreesWith(Printed second) {
        BigDecimal difference = base().subtract(second.base()).abs();
        return difference.compareTo(second.halfLastPlace()) <= 0
                || hasDecimals() && difference.compareTo(halfLastPlace()) <= 0;
    }

    /** Returns the number as typed and the unit's symbol. */
    default String label() {
        return number().text() + " " + unitSymbol();
    }
}
