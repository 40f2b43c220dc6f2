/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.OptionalInt;

/**
 * A sample of measurements of one dimension.
 *
 * @param mean the arithmetic mean, zero or more
 * @param standardDeviation the sample standard deviation, zero or more
 * @param n the number of specimens, 2 or more, where it is stated
 */
public record Sample(Length mean, Length standardDeviation, OptionalInt n) {

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if the mean or deviation is negative, or n is below 2
     */
    public Sample {
        if (mean.isNegative() || standardDeviation.isNegative() || n.orElse(2) < 2) {
            throw new IllegalArgumentException("not a sample: mean " + mean + ", sd " + standardDeviation + ", " + n);
        }
    }
}
