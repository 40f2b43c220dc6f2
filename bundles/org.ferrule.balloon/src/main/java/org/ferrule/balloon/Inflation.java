/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.balloon;

import java.math.BigDecimal;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.PressureUnit;

/** What a {@link ComplianceTable} answers: a point of the table's curve, or why it gives none. */
public sealed interface Inflation {

    /**
     * A point inside the table, at most at the rated burst pressure.
     *
     * @param pascals the gauge pressure; rounded down where it was asked for
     * @param diameter the balloon's diameter on the bench, not in a vessel; rounded up where it was asked for
     */
    record Point(BigDecimal pascals, Length diameter) implements Inflation {

        /** Returns the nearest double number of units of pressure. */
        public double in(PressureUnit unit) {
            return pascals.doubleValue() / unit.pascals().doubleValue();
        }
    }

    /**
     * No answer, because nothing is told of such an inflation.
     *
     * @param code why
     * @param asked the pressure or diameter that was asked for
     * @param bound the pressure or diameter that it passes, as printed
     */
    record Refused(Refusal code, String asked, String bound) implements Inflation {
    }

    /** Why a table gives no answer. */
    enum Refusal {
        /** Below the first row. */
        BELOW_TABLE,
        /** Above the last row. */
        ABOVE_TABLE,
        /** Above the rated burst pressure, or reached only above it. */
        BEYOND_RATED_BURST
    }
}
