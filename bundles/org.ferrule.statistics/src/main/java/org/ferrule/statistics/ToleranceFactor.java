/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import org.apache.commons.numbers.gamma.Erfc;
import org.apache.commons.numbers.gamma.InverseErfc;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * One-sided tolerance factors of a normal sample (ISO 16269-6): with the given confidence, at least the given share of
 * the population lies below mean + k sd. The factor solves E[Phi(sqrt(n) (k S - z))] = confidence, where S is the
 * sample's standard deviation over the population's and z the quantile of the share. The expectation is integrated
 * over the logarithm of S, in which the integrand is smooth for the smallest samples too, with Simpson's rule.
 */
public final class ToleranceFactor {
    private static final int STEPS = 500;
    private static final double RELATIVE_ACCURACY = 1e-9;

    private final double rootOfN;
    private final double[] deviations = new double[STEPS + 1];
    private final double[] weights = new double[STEPS + 1];

    private ToleranceFactor(int n) {
        rootOfN = Math.sqrt(n);
        double nu = n - 1;
        // Twelve standard deviations of S; below 1 the density falls like a power, to 1e-13 of the whole.
        double spread = 12 / Math.sqrt(2 * nu);
        double from = -Math.max(spread, 30 / nu);
        double step = (Math.log1p(spread) - from) / STEPS;
        for (int i = 0; i <= STEPS; i++) {
            double logarithm = from + i * step;
            deviations[i] = Math.exp(logarithm);
            weights[i] = simpson(i) * step / 3 * density(logarithm, nu);
        }
    }

    /**
     * The factor k, to nine digits and rounded up.
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
        return new ToleranceFactor(n).solve(confidence, -Math.sqrt(2) * InverseErfc.value(2 * coverage));
    }

    private double solve(double confidence, double z) {
        double below = 0;
        double above = 1;
        while (confidenceOf(above, z) < confidence) {
            below = above;
            above *= 2;
        }
        while (above - below > RELATIVE_ACCURACY * above) {
            double middle = (below + above) / 2;
            if (confidenceOf(middle, z) < confidence) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return above;
    }

    private double confidenceOf(double k, double z) {
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            sum += weights[i] * normal(rootOfN * (k * deviations[i] - z));
        }
        return sum;
    }

    private static int simpson(int i) {
        if (i == 0 || i == STEPS) {
            return 1;
        }
        return i % 2 == 1 ? 4 : 2;
    }

    /** Density of the logarithm of the root of a chi-squared variable over its degrees of freedom. */
    private static double density(double logarithm, double nu) {
        double half = nu / 2;
        return 2 * Math.exp(half * Math.log(half) - LogGamma.value(half) + nu * logarithm
                - half * Math.exp(2 * logarithm));
    }

    private static double normal(double x) {
        return Erfc.value(-x / Math.sqrt(2)) / 2;
    }
}
