/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import java.util.List;

/**
 * Between what the chance lies that at least one of several things happens, such as an interference in one of several
 * nested clearances.
 *
 * @param low the chance if the things happen together as far as they can: the largest of them
 * @param high the chance if no two ever happen together: their sum, at most 1
 */
public record JointProbability(double low, double high) {

    /**
     * Returns the bounds that hold whatever the things have to do with each other (Boole and Fréchet). Clearances that
     * share a part, such as both sides of one extension's wall, are never independent.
     *
     * @param chances between 0 and 1, both included; of no chance at all both bounds are 0
     * @throws IllegalArgumentException naming the chances outside this range
     */
    public static JointProbability bounds(List<Double> chances) {
        check(chances);
        double most = chances.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double sum = chances.stream().mapToDouble(Double::doubleValue).sum();
        return new JointProbability(most, Math.min(1, Math.max(most, sum)));
    }

    /**
     * Returns the chance if the things have nothing to do with each other: clearances that share no part.
     *
     * @param chances between 0 and 1, both included
     * @throws IllegalArgumentException naming the chances outside this range
     */
    public static double independent(List<Double> chances) {
        check(chances);
        // Through logarithms, so that tiny chances are not lost beside 1.
        return -Math.expm1(chances.stream().mapToDouble(chance -> Math.log1p(-chance)).sum());
    }

    private static void check(List<Double> chances) {
        if (!chances.stream().allMatch(chance -> chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException("not chances between 0 and 1: " + chances);
        }
    }
}
