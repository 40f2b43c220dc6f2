/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;

/**
 * One printed number of a dimension with its unit.
 *
 * @param number the token of the number
 * @param unit the unit, or null while it is not known yet
 */
record Figure(Token number, LengthUnit unit) {

    int start() {
        return number.start();
    }

    int end() {
        return number.end();
    }

    BigDecimal value() {
        return new BigDecimal(number.text());
    }

    Length length() {
        return Length.of(value(), unit);
    }

    /** Returns this figure, with the given unit if it has none of its own. */
    Figure orIn(LengthUnit other) {
        return unit == null ? new Figure(number, other) : this;
    }

    boolean hasDecimals() {
        return value().scale() > 0;
    }

    /** Returns half a unit of the last printed digit: as much as rounding may have changed the figure. */
    Length halfLastPlace() {
        return Length.of(BigDecimal.ONE.movePointLeft(value().scale()), unit).dividedBy(2);
    }

    /** Returns number as typed and unit symbol. */
    @Override
    public String toString() {
        return number.text() + " " + unit.symbol();
    }
}
