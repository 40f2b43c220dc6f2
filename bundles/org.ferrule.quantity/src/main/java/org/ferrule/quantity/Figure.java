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
record Figure(Token number, LengthUnit unit) implements Printed {

    @Override
    public BigDecimal unitSize() {
        return BigDecimal.valueOf(unit.thirdNanometres());
    }

    @Override
    public String unitSymbol() {
        return unit.symbol();
    }

    Length length() {
        return Length.of(value(), unit);
    }

    /** Returns this figure, with the given unit if it has none of its own. */
    Figure orIn(LengthUnit other) {
        return unit == null ? new Figure(number, other) : this;
    }
}
