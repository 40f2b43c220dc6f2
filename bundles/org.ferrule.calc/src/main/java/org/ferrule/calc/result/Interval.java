/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.result;

import java.math.BigDecimal;

/**
 * What a value is proved or taken to lie between.
 *
 * @param low the lower end, rounded down
 * @param high the upper end, rounded up
 */
public record Interval(BigDecimal low, BigDecimal high) {

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException naming the ends if they are reversed
     */
    public Interval {
        if (low.compareTo(high) > 0) {
            throw new IllegalArgumentException("ends reversed: " + low + " > " + high);
        }
    }
}
