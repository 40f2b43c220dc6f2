/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import java.util.List;

/**
 * The flow round discs in a lumen of radius 1, by a source and multipoles in each disc.
 * <p>
 * With lap u = -4 and u = 0 on wall and discs, u = 1 - |z|^2 + h, where h is harmonic. h is written as a sum of a
 * logarithm and of powers of radius / (z - centre) about each disc, each with its image in the wall, so that it vanishes
 * there by itself. What is left is to meet u = 0 on the discs: the first harmonics along each circle have to vanish
 * (Galerkin's method for the single layer potential of the wall's Green function). The matrix is symmetric and
 * positive definite. The energy of h is a maximum over all such sums, therefore <b>the share found is never below the
 * true one</b> and falls with every term; the error is of the order of the square of what is left on the circles.
 */
final class Multipoles {
    private final List<Circle> discs;
    private final int terms;
    private final double[] strengths;
    private final double share;

    /**
     * Solves for the strengths.
     *
     * @param discs discs with a radius above zero, that do not overlap and lie in the lumen; they may touch
     * @param terms the number of multipoles in each disc, 1 or more
     */
    Multipoles(List<Circle> discs, int terms) {
        this.discs = discs;
        this.terms = terms;
        double[] wanted = wanted();
        strengths = new Cholesky(matrix()).solve(wanted);
        double blocked = 0;
        for (int k = 0; k < wanted.length; k++) {
            blocked += wanted[k] * strengths[k];
        }
        for (Circle disc : discs) {
            blocked += Math.pow(disc.radius(), 4);
        }
        share = Math.max(0, Math.min(1, 1 - blocked));
    }

    private int place(int disc) {
        return disc * (2 * terms + 1);
    }

    private double[][] matrix() {
        int size = place(discs.size());
        double[][] matrix = new double[size][size];
        for (int target = 0; target < discs.size(); target++) {
            for (int source = 0; source <= target; source++) {
                new Coupling(discs.get(source), discs.get(target), terms).write(matrix, place(target), place(source));
            }
        }
        return matrix;
    }

    /** The harmonics of |z|^2 - 1 along each circle: a mean and the first one. */
    private double[] wanted() {
        double[] wanted = new double[place(discs.size())];
        for (int i = 0; i < discs.size(); i++) {
            Circle disc = discs.get(i);
            wanted[place(i)] = disc.centre().square() + disc.radius() * disc.radius() - 1;
            wanted[place(i) + 1] = 2 * disc.radius() * disc.centre().re();
            wanted[place(i) + 2] = 2 * disc.radius() * disc.centre().im();
        }
        return wanted;
    }

    /** Returns the share of the empty lumen's flow, from 0 to 1. */
    double share() {
        return share;
    }

    /**
     * Returns how the share grows when a disc moves, to the right and upwards: the mean over its circle of the square of
     * the velocity's slope, times the direction (Hadamard's formula).
     */
    Complex gradient(int disc) {
        double radius = discs.get(disc).radius();
        Complex sum = new Complex(0, 0);
        for (int n = 0; n < terms; n++) {
            sum = sum.plus(slope(disc, n).times(slope(disc, n + 1).conjugate()));
        }
        return sum.times(-2 * radius);
    }

    /** The n-th harmonic of the slope of the velocity along the circle. */
    private Complex slope(int disc, int n) {
        double radius = discs.get(disc).radius();
        if (n == 0) {
            return new Complex(-2 * radius - strengths[place(disc)] / radius, 0);
        }
        int k = place(disc) + 2 * n - 1;
        return new Complex(-strengths[k], strengths[k + 1]).times(Math.sqrt(n) / radius);
    }
}
