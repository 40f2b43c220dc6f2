/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import java.util.function.DoubleUnaryOperator;

import org.apache.commons.numbers.gamma.RegularizedBeta;

/**
 * An interval for a share that was counted in a sample: with at least the confidence asked for it holds the true share
 * (Clopper and Pearson, Biometrika 1934;26:404-413). Each end leaves half of the doubt.
 *
 * @param low lower end, 0 or more
 * @param high upper end, at most 1
 */
public record BinomialInterval(double low, double high) {
    private static final int HALVINGS = 60;

    /**
     * Returns the interval of {@code count} in {@code n}.
     *
     * @param count from 0 to n
     * @param n at least 1
     * @param confidence between 0 and 1, both excluded
     * @throws IllegalArgumentException naming the values outside these ranges
     */
    public static BinomialInterval of(int count, int n, double confidence) {
        if (n < 1 || count < 0 || count > n || !(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("no interval for " + count + " of " + n + ", confidence " + confidence);
        }
        double doubt = (1 - confidence) / 2;
        double low = count == 0 ? 0 : share(p -> RegularizedBeta.value(p, count, n - count + 1.0) - doubt);
        double high = count == n ? 1 : share(p -> RegularizedBeta.value(p, count + 1.0, n - count) - 1 + doubt);
        return new BinomialInterval(low, high);
    }

    /** The share at which a function that rises from below zero to above crosses zero. */
    private static double share(DoubleUnaryOperator function) {
        double below = 0;
        double above = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (below + above) / 2;
            if (function.applyAsDouble(middle) < 0) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return (below + above) / 2;
    }
}
