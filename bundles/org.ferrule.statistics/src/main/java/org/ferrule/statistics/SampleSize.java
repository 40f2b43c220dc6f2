/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import java.math.BigDecimal;
import java.math.MathContext;

/** How many specimens must pass when none may fail. */
public final class SampleSize {

    private SampleSize() {
    }

    /**
     * Returns the least n of which the share to the power of n is at most 1 - confidence: when n specimens of n pass,
     * at least the share of the population would, with that confidence (binomial distribution, no failures).
     *
     * @param confidence between 0 and 1, both excluded
     * @param coverage the share, between 0 and 1, both excluded
     * @throws IllegalArgumentException naming the values outside these ranges, or if more than a thousand million
     *         specimens would be needed
     */
    public static int zeroFailures(double confidence, double coverage) {
        if (!(confidence > 0 && confidence < 1) || !(coverage > 0 && coverage < 1)) {
            throw new IllegalArgumentException(
                    "no sample size for confidence " + confidence + ", coverage " + coverage);
        }
        double estimate = Math.log1p(-confidence) / Math.log(coverage);
        if (estimate > 999_999_998) {
            throw new IllegalArgumentException("more than a thousand million specimens for confidence " + confidence
                    + ", coverage " + coverage);
        }
        // The logarithms may miss by a rounding where the answer is a whole number; decimals decide.
        int n = Math.max(1, (int) estimate - 1);
        while (!suffices(n, confidence, coverage)) {
            n++;
        }
        return n;
    }

    private static boolean suffices(int n, double confidence, double coverage) {
        BigDecimal allPass = BigDecimal.valueOf(coverage).pow(n, MathContext.DECIMAL128);
        return allPass.compareTo(BigDecimal.ONE.subtract(BigDecimal.valueOf(confidence))) <= 0;
    }
}
