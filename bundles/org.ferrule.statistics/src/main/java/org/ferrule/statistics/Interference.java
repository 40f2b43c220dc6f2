/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import java.util.Arrays;

/**
 * The chance that two parts with normally distributed sizes interfere: that their clearance is below zero (the
 * stress-strength form). Only where a standard deviation was given or measured; a printed limit is not three of them.
 */
public final class Interference {

    private Interference() {
    }

    /**
     * Returns Phi(-mean/sd), the chance of a clearance below zero; where the deviation is zero, 0 or 1.
     *
     * @param meanMm the mean of the clearance, which may be negative
     * @param sdMm the standard deviation of the clearance, zero or more
     * @throws IllegalArgumentException naming the figures if one is not finite or the deviation is negative
     */
    public static double probability(double meanMm, double sdMm) {
        if (!Double.isFinite(meanMm) || !(sdMm >= 0 && sdMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "no chance of interference for mean " + meanMm + " mm, standard deviation "
                            + sdMm + " mm");
        }
        if (sdMm == 0) {
            return meanMm < 0 ? 1 : 0;
        }
        return Normal.below(-meanMm / sdMm);
    }

    /**
     * Returns the standard deviation of a clearance between independent parts: the root of the sum of squares.
     *
     * @param sdMm the standard deviations of the parts, zero or more
     * @throws IllegalArgumentException naming the figures if one is negative or not finite
     */
    public static double combined(double... sdMm) {
        if (!Arrays.stream(sdMm).allMatch(sd -> sd >= 0 && sd < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("not standard deviations in mm: " + Arrays.toString(sdMm));
        }
        return Arrays.stream(sdMm).reduce(0, Math::hypot);
    }
}
