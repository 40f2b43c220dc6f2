/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

/**
 * A candidate for the smallest circle round fixed discs: the circle that touches one, two or three of them (its
 * support), with what it proves. Where the directions from its centre to the support balance with weights of zero or
 * more, no circle round the support is smaller, and moving a disc of the support changes the smallest circle by at
 * least its weight times the movement away from the centre (the duality of convex programming).
 *
 * @param x the centre
 * @param y the centre
 * @param radius the weighted radius at which the support is touched
 * @param support the indices of the discs that it touches
 * @param weights their weights, zero or more, of sum 1; empty if they do not balance, so that nothing is proved
 */
record Rim(double x, double y, double radius, int[] support, double[] weights) {

    /** Returns the radius if it is proved to be a lower bound, else a bound below all. */
    double lower() {
        return weights.length == 0 ? Double.NEGATIVE_INFINITY : radius;
    }

    /** Returns the weight of a disc, zero if it is not in the support. */
    double weight(int disc) {
        for (int i = 0; i < weights.length; i++) {
            if (support[i] == disc) {
                return weights[i];
            }
        }
        return 0;
    }

    /** Returns the radius that a circle about this centre needs for all discs. */
    double reach(FixedDiscs discs) {
        double reach = 0;
        for (int i = 0; i < discs.size(); i++) {
            reach = Math.max(reach, discs.reach(i, x, y));
        }
        return reach;
    }
}
