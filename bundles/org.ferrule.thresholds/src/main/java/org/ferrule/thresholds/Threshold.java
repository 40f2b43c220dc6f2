/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds;

import java.math.BigDecimal;

/**
 * A value from which on something holds.
 *
 * @param value the value, above zero
 * @param included whether it holds at the value itself, or only beyond it
 */
public record Threshold(BigDecimal value, boolean included) {

    /**
     * Checks the value.
     *
     * @throws IllegalArgumentException naming it if it is not above zero
     */
    public Threshold {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException("not a threshold: " + value);
        }
    }

    /** From that value on. */
    public static Threshold from(String value) {
        return new Threshold(new BigDecimal(value), true);
    }

    /** Beyond that value. */
    public static Threshold beyond(String value) {
        return new Threshold(new BigDecimal(value), false);
    }

    /** Tells whether a value has reached it. */
    public boolean isReachedBy(BigDecimal reached) {
        int sign = reached.compareTo(value);
        return sign > 0 || sign == 0 && included;
    }
}
