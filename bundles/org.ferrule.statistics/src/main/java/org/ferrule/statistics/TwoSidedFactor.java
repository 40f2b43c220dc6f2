/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import java.util.Arrays;

import org.apache.commons.numbers.gamma.RegularizedGamma;

/**
 * The two-sided factor: mean ± k sd holds the share when k S reaches r(x), where S is the sample's standard deviation
 * over the population's, x the error of the mean and r(x) half of the range about x that holds the share. So it solves
 * E[P(S &gt;= r(x)/k)] = confidence, an integral over x of the upper part of a chi-squared distribution.
 */
final class TwoSidedFactor {
    private static final int STEPS = 200;
    /** Beyond, the density of the mean is below 1e-17. */
    private static final double MOST_DEVIATIONS = 9;
    private static final int HALVINGS = 60;

    private final double nu;
    private final double[] errors;
    private final double[] weights;

    TwoSidedFactor(int n) {
        nu = n - 1;
        SimpsonSum half = new SimpsonSum(0, MOST_DEVIATIONS, STEPS);
        weights = half.weights(x -> 2 * Normal.density(x));
        errors = Arrays.stream(half.places()).map(x -> x / Math.sqrt(n)).toArray();
    }

    double of(double confidence, double coverage) {
        double[] ranges = Arrays.stream(errors).map(x -> halfRange(x, coverage)).toArray();
        return LeastFactor.reaching(confidence, k -> confidenceOf(k, ranges));
    }

    private double confidenceOf(double k, double[] ranges) {
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            sum += weights[i] * RegularizedGamma.Q.value(nu / 2, nu * ranges[i] * ranges[i] / (2 * k * k));
        }
        return sum;
    }

    private static double halfRange(double error, double coverage) {
        double below = 0;
        double above = error - Normal.quantile((1 - coverage) / 2);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (below + above) / 2;
            if (Normal.below(error + middle) - Normal.below(error - middle) < coverage) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return above;
    }
}
