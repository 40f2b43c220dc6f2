/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

/**
 * Finds the smallest circle round fixed discs. By Helly's theorem one to three of them determine it, so all such
 * supports are tried; with the few discs of a shaft that is quick, and it has no case that goes wrong when discs touch
 * or stand in line: every candidate gives an upper bound, and every balanced one a lower bound.
 */
final class RimSearch {
    private final FixedDiscs discs;
    private Rim tightest;
    private Rim smallest;
    private double smallestReach = Double.POSITIVE_INFINITY;

    private RimSearch(FixedDiscs discs) {
        this.discs = discs;
    }

    /**
     * The answer of a search.
     *
     * @param bound the candidate that proves the largest lower bound
     * @param best the candidate whose centre needs the smallest circle round all discs
     * @param reach the radius of that circle
     */
    record Result(Rim bound, Rim best, double reach) {
    }

    /** Returns the smallest circle round the discs, of which there is at least one. */
    static Result search(FixedDiscs discs) {
        return new RimSearch(discs).search();
    }

    private Result search() {
        for (int i = 0; i < discs.size(); i++) {
            offer(new Rim(discs.x(i), discs.y(i), discs.radius(i), new int[] { i }, new double[] { 1 }));
            for (int j = i + 1; j < discs.size(); j++) {
                pair(i, j);
                for (int k = j + 1; k < discs.size(); k++) {
                    triple(i, j, k);
                }
            }
        }
        return new Result(tightest, smallest, smallestReach);
    }

    private void offer(Rim rim) {
        if (tightest == null || rim.lower() > tightest.lower()) {
            tightest = rim;
        }
        double reach = rim.reach(discs);
        if (reach < smallestReach) {
            smallest = rim;
            smallestReach = reach;
        }
    }

    /** The circle whose diameter runs through both centres, unless one disc holds the other. */
    private void pair(int i, int j) {
        double distance = discs.distance(i, j);
        double fromFirst = (distance + discs.radius(j) - discs.radius(i)) / 2;
        if (fromFirst < 0 || fromFirst > distance || distance == 0) {
            return;
        }
        double part = fromFirst / distance;
        offer(new Rim(discs.x(i) + part * (discs.x(j) - discs.x(i)), discs.y(i) + part * (discs.y(j) - discs.y(i)),
                (distance + discs.radius(i) + discs.radius(j)) / 2, new int[] { i, j }, new double[] { 0.5, 0.5 }));
    }

    /**
     * The circles that three discs touch from inside (the problem of Apollonius). With the first centre at the origin
     * and t the distance of the circle's centre c from it: p.c = (p^2 - e^2)/2 + e t for both other centres p, whose
     * radii exceed the first by e. So c = u + v t with |c| = t, a quadratic for t.
     */
    private void triple(int i, int j, int k) {
        double px = discs.x(j) - discs.x(i);
        double py = discs.y(j) - discs.y(i);
        double qx = discs.x(k) - discs.x(i);
        double qy = discs.y(k) - discs.y(i);
        double determinant = px * qy - py * qx;
        if (determinant == 0) {
            return;
        }
        double e = discs.radius(j) - discs.radius(i);
        double f = discs.radius(k) - discs.radius(i);
        double g = (px * px + py * py - e * e) / 2;
        double h = (qx * qx + qy * qy - f * f) / 2;
        double ux = (g * qy - h * py) / determinant;
        double uy = (h * px - g * qx) / determinant;
        double vx = (e * qy - f * py) / determinant;
        double vy = (f * px - e * qx) / determinant;
        for (double t : Quadratic.roots(vx * vx + vy * vy - 1, 2 * (ux * vx + uy * vy), ux * ux + uy * uy)) {
            offer(balanced(discs.x(i) + ux + vx * t, discs.y(i) + uy + vy * t, new int[] { i, j, k }));
        }
    }

    /** Weighs three discs so that the directions to them cancel out, if that is possible. */
    private Rim balanced(double x, double y, int[] support) {
        double[] weights = new double[support.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = cross(support[(i + 1) % 3], support[(i + 2) % 3], x, y);
        }
        double sum = weights[0] + weights[1] + weights[2];
        double radius = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
            radius += weights[i] * discs.reach(support[i], x, y);
        }
        boolean balanced = weights[0] >= 0 && weights[1] >= 0 && weights[2] >= 0;
        return new Rim(x, y, radius, support, balanced ? weights : new double[0]);
    }

    /** Returns the sine of the angle between the directions from a point to two centres. */
    private double cross(int i, int j, double x, double y) {
        double ix = discs.x(i) - x;
        double iy = discs.y(i) - y;
        double jx = discs.x(j) - x;
        double jy = discs.y(j) - y;
        return (ix * jy - iy * jx) / (Math.hypot(ix, iy) * Math.hypot(jx, jy));
    }
}
