/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.figure;

import org.apache.commons.numbers.gamma.Erfc;
import org.apache.commons.numbers.gamma.InverseErfc;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * One-sided tolerance factors of a normal sample (ISO 16269-6): with the given confidence, at least the given share of
 * the population lies below mean + k sd. The factor solves E[Phi(sqrt(n) (k S - z))] = confidence, where S is the
 * sample's standard deviation over the population's; the expectation is integrated with Simpson's rule.
 */
public final class ToleranceFactor {
    private static final int STEPS = 4000;
    private static final double WIDEST_SPREADS = 12;

    private ToleranceFactor() {
    }

    /**
     * The factor k, to about eight digits.
     *
     * @param n sample size, at least 2
     * @param confidence between 0 and 1, both excluded
     * @param coverage between 0.5 and 1, 1 excluded
     * @throws IllegalArgumentException naming the values outside these ranges
     */
    public static double oneSided(int n, double confidence, double coverage) {
        if (n < 2 || !(confidence > 0 && confidence < 1) || !(coverage >= 0.5 && coverage < 1)) {
            throw new IllegalArgumentException("no tolerance factor for n " + n + ", confidence " + confidence
                    + ", coverage " + coverage);
        }
        double z = -Math.sqrt(2) * InverseErfc.value(2 * coverage);
        double below = 0;
        double above = 1;
        while (confidenceOf(above, n, -z) < confidence) {
            above *= 2;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (below + above) / 2;
            if (confidenceOf(middle, n, -z) < confidence) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return above;
    }

    private static double confidenceOf(double k, int n, double minusZ) {
        double spread = WIDEST_SPREADS / Math.sqrt(2.0 * (n - 1));
        double from = Math.max(0, 1 - spread);
        double to = 1 + spread;
        double h = (to - from) / STEPS;
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double s = from + i * h;
            int weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * density(s, n - 1) * normal(Math.sqrt(n) * (k * s + minusZ));
        }
        return sum * h / 3;
    }

    /** Density of the root of a chi-squared variable over its degrees of freedom. */
    private static double density(double s, int nu) {
        if (s == 0) {
            return nu == 1 ? Math.sqrt(2 / Math.PI) : 0;
        }
        double half = nu / 2.0;
        return 2 * Math.exp(half * Math.log(half) - LogGamma.value(half) + (nu - 1) * Math.log(s) - half * s * s);
    }

    private static double normal(double x) {
        return Erfc.value(-x / Math.sqrt(2)) / 2;
    }
}
