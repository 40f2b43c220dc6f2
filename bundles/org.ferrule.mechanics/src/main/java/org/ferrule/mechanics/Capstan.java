/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.mechanics;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * What friction takes from a pull or a push along bends (Euler and Eytelwein): the share exp(-mu phi) arrives, whatever
 * the radius. Good for comparing two paths under one coefficient; useless as an absolute figure, because the coefficient
 * in a wet, coated, calcified lumen is not known.
 */
public final class Capstan {

    private Capstan() {
    }

    /**
     * Returns how much more is needed at the near end than arrives at the far end: exp(mu phi).
     *
     * @param friction the coefficient mu, zero or more
     * @param angleRad the sum phi of all angles of the bends, in any planes, zero or more
     * @throws IllegalArgumentException naming a figure that is out of range
     */
    public static double ratio(double friction, double angleRad) {
        return Math.exp(Check.notNegative("friction", friction) * Check.notNegative("angle in rad", angleRad));
    }

    /** Returns the share of a force that arrives at the far end: exp(-mu phi); see {@link #ratio}. */
    public static double arriving(double friction, double angleRad) {
        return 1 / ratio(friction, angleRad);
    }

    /**
     * Returns the shares of a force that arrive behind each of several bends.
     *
     * @param friction the coefficient mu, zero or more
     * @param anglesRad the angles of the bends from near to far, each zero or more
     * @throws IllegalArgumentException naming a figure that is out of range
     */
    public static double[] arrivingAlong(double friction, double... anglesRad) {
        double[] sums = anglesRad.clone();
        Arrays.stream(sums).forEach(angle -> Check.notNegative("angle in rad", angle));
        Arrays.parallelPrefix(sums, Double::sum);
        return DoubleStream.of(sums).map(angle -> arriving(friction, angle)).toArray();
    }
}
