/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import java.util.Arrays;

import org.apache.commons.numbers.gamma.LogGamma;

/**
 * The one-sided factor solves E[Phi(sqrt(n) (k S - z))] = confidence, where S is the sample's standard deviation over
 * the population's and z the quantile of the share. The expectation is integrated over the logarithm of S, in which the
 * integrand is smooth for the smallest samples too.
 */
final class OneSidedFactor {
    private static final int STEPS = 500;

    private final double rootOfN;
    private final double[] deviations;
    private final double[] weights;

    OneSidedFactor(int n) {
        rootOfN = Math.sqrt(n);
        double nu = n - 1;
        // Twelve standard deviations of S; below 1 the density falls like a power, to 1e-13 of the whole.
        double spread = 12 / Math.sqrt(2 * nu);
        SimpsonSum logarithms = new SimpsonSum(-Math.max(spread, 30 / nu), Math.log1p(spread), STEPS);
        weights = logarithms.weights(logarithm -> density(logarithm, nu));
        deviations = Arrays.stream(logarithms.places()).map(Math::exp).toArray();
    }

    double of(double confidence, double coverage) {
        double z = Normal.quantile(coverage);
        return LeastFactor.reaching(confidence, k -> confidenceOf(k, z));
    }

    private double confidenceOf(double k, double z) {
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            sum += weights[i] * Normal.below(rootOfN * (k * deviations[i] - z));
        }
        return sum;
    }

    /** Density of the logarithm of the root of a chi-squared variable over its degrees of freedom. */
    private static double density(double logarithm, double nu) {
        double half = nu / 2;
        return 2 * Math.exp(half * Math.log(half) - LogGamma.value(half) + nu * logarithm
                - half * Math.exp(2 * logarithm));
    }
}
