/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

/**
 * Tolerance factors of a normal sample (ISO 16269-6): with the given confidence, at least the given share of the
 * population lies below mean + k sd (one-sided), or between mean - k sd and mean + k sd (two-sided). A sample that is
 * not normal has no such factor, and a small one does not show that it is.
 */
public final class ToleranceFactor {

    private ToleranceFactor() {
    }

    /**
     * The one-sided factor k, to nine digits and rounded up.
     *
     * @param n sample size, at least 2
     * @param confidence between 0 and 1, both excluded
     * @param coverage between 0.5 and 1, 1 excluded
     * @throws IllegalArgumentException naming the values outside these ranges
     */
    public static double oneSided(int n, double confidence, double coverage) {
        check(n, confidence, coverage);
        return new OneSidedFactor(n).of(confidence, coverage);
    }

    /**
     * The two-sided factor k, to nine digits and rounded up.
     *
     * @param n sample size, at least 2
     * @param confidence between 0 and 1, both excluded
     * @param coverage between 0.5 and 1, 1 excluded
     * @throws IllegalArgumentException naming the values outside these ranges
     */
    public static double twoSided(int n, double confidence, double coverage) {
        check(n, confidence, coverage);
        return new TwoSidedFactor(n).of(confidence, coverage);
    }

    private static void check(int n, double confidence, double coverage) {
        if (n < 2 || !(confidence > 0 && confidence < 1) || !(coverage >= 0.5 && coverage < 1)) {
            throw new IllegalArgumentException("no tolerance factor for n " + n + ", confidence " + confidence
                    + ", coverage " + coverage);
        }
    }
}
