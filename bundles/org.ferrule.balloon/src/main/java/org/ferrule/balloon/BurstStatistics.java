/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.balloon;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.PressureUnit;
import org.ferrule.statistics.ToleranceFactor;

/**
 * What a sample of burst tests supports as a rated burst pressure: with the confidence, at least the share of balloons
 * survives the pressure mean - k sd (ISO 16269-6). For normally distributed bursts only; look at the sample first.
 *
 * @param n the number of balloons, 2 or more
 * @param meanAtm the mean burst pressure, above zero
 * @param sdAtm the sample standard deviation, zero or more
 */
public record BurstStatistics(int n, double meanAtm, double sdAtm) {
    /** Confidence that rated burst pressures are stated with (from memory of guidance on such catheters, 2010). */
    public static final double CONFIDENCE = 0.95;
    /** Share of balloons that survive the rated burst pressure (from memory of the same guidance). */
    public static final double COVERAGE = 0.999;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the values outside them
     */
    public BurstStatistics {
        if (n < 2 || !(meanAtm > 0 && meanAtm < Double.POSITIVE_INFINITY)
                || !(sdAtm >= 0 && sdAtm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("not a sample of bursts: n " + n + ", mean " + meanAtm
                    + " atm, standard deviation " + sdAtm + " atm");
        }
    }

    /**
     * Returns the statistics of burst pressures.
     *
     * @param bursts two or more readable pressures
     * @throws IllegalArgumentException if there are fewer
     */
    public static BurstStatistics of(List<Pressure> bursts) {
        double[] atm = bursts.stream().mapToDouble(burst -> burst.in(PressureUnit.ATMOSPHERE)).toArray();
        double mean = Arrays.stream(atm).average().orElse(0);
        double squares = Arrays.stream(atm).map(burst -> (burst - mean) * (burst - mean)).sum();
        return new BurstStatistics(atm.length, mean, Math.sqrt(squares / (atm.length - 1)));
    }

    /**
     * Returns the pressure that the share of balloons survives, in atm; zero or less when the sample spreads too much.
     *
     * @param confidence between 0 and 1, both excluded
     * @param coverage the share, 0.5 to 1, 1 excluded
     * @throws IllegalArgumentException naming the values outside these ranges
     */
    public double lowerBoundAtm(double confidence, double coverage) {
        return meanAtm - ToleranceFactor.oneSided(n, confidence, coverage) * sdAtm;
    }

    /** Returns the largest whole number of atm that may be labelled, at 95 % confidence for 99.9 % of balloons. */
    public OptionalInt ratedAtm() {
        int label = (int) Math.floor(lowerBoundAtm(CONFIDENCE, COVERAGE));
        return label >= 1 ? OptionalInt.of(label) : OptionalInt.empty();
    }
}
