/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.rules;

import java.math.BigDecimal;

/**
 * How sure an interval made from a sample must be.
 *
 * @param confidence between 0 and 1, both excluded
 * @param coverage share of the population inside, between 0 and 1, both excluded
 */
public record Sampling(BigDecimal confidence, BigDecimal coverage) {

    public Sampling {
        requireShare("confidence", confidence);
        requireShare("coverage", coverage);
    }

    private static void requireShare(String name, BigDecimal value) {
        if (value.signum() <= 0 || value.compareTo(BigDecimal.ONE) >= 0) {
            throw new IllegalArgumentException(name + " must lie between 0 and 1, not " + value);
        }
    }
}
