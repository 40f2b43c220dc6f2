/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

/**
 * Goes from an arrangement to the smallest circle close by. First bodies may overlap a little, which tells quickly what
 * the circle will be; the overlaps are only taken away (the method of multipliers) if that is worth while.
 */
final class Relaxation {
    /** The weight of the radius where overlaps of a tenth of a body are allowed. */
    static final double SOFT = 0.3;
    /** The weight of the radius where overlaps are small. */
    static final double FIRM = 0.03;
    private static final double HARD = 1e-8;
    private static final int MOST_STEPS = 60;
    private static final int MOST_FILLING_STEPS = 300;
    private static final int MOST_ROUNDS = 14;
    /** How far the radius that is expected after each round may be off; relative. In the end it must be better. */
    private static final double[] DOUBT = { 3e-3, 1e-4, 3e-6, 1e-7, -1e-10 };
    /** Kept between bodies, so that rounding makes no overlap; relative to the largest body. */
    private static final double GAP = 1e-11;
    /** What rounding, at the worst, may leave; relative to the largest body. */
    private static final double LARGEST_OVERLAP = 1e-9;

    private final Parts parts;
    private final Energy energy;
    private final Descent descent;

    Relaxation(Parts parts) {
        this.parts = parts;
        energy = new Energy(parts);
        descent = new Descent(energy, parts.variables);
    }

    /** Goes to the least energy close by. Returns the radius to be expected when all overlaps are gone. */
    double relax(double[] variables, double weight) {
        energy.keepApart(0);
        energy.soften(weight);
        descent.forget();
        descent.descend(variables, MOST_STEPS, weight * 1e-2);
        return energy.shift(variables);
    }

    /** Tells whether it is worth while to take the overlaps away. */
    static boolean isPromising(double expected, double best) {
        return expected < best * (1 + DOUBT[0]);
    }

    /**
     * Takes the overlaps away that a relaxation with this weight has left, as long as a radius less than the best is to
     * be expected. Returns whether it is, in the end.
     */
    boolean firm(double[] variables, double relaxedWeight, double best) {
        energy.keepApart(GAP);
        double weight = relaxedWeight;
        for (int round = 1; round < MOST_ROUNDS; round++) {
            descent.descend(variables, MOST_STEPS, Math.max(1e-16, weight * 1e-4));
            double expected = energy.shift(variables);
            if (expected > best * (1 + DOUBT[Math.min(round, DOUBT.length - 1)])) {
                return false;
            }
            if (weight > HARD) {
                weight *= 0.1;
                energy.harden(0.1);
            }
        }
        return fix(variables, best);
    }

    /** Moves all but the first bodies, in the same circle, until nothing overlaps. Returns whether that is possible. */
    boolean fill(double[] variables, int fixedBodies) {
        energy.fix(parts.first[fixedBodies]);
        descent.forget();
        descent.descend(variables, MOST_FILLING_STEPS, LARGEST_OVERLAP / 10);
        return fix(variables, Double.POSITIVE_INFINITY);
    }

    /** Sets the radius to what the bodies need where they lie. Tells whether it is better and nothing overlaps. */
    private boolean fix(double[] variables, double best) {
        double radius = energy.radius(variables);
        variables[parts.variables - 1] = radius;
        return radius < best && energy.overlap(variables) < LARGEST_OVERLAP;
    }
}
