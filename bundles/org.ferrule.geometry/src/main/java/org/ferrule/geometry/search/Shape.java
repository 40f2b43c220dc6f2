/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import java.util.Arrays;

/**
 * A rigid body in a frame of its own: discs, or a bar with two round ends.
 *
 * @param x the centres
 * @param y the centres
 * @param radius the radii
 * @param bar whether the body is all that lies within the radius of the line between its two points, which then have
 *        the same radius; else other bodies may lie between its discs
 */
public record Shape(double[] x, double[] y, double[] radius, boolean bar) {

    /** Returns a single disc. */
    public static Shape disc(double radius) {
        return new Shape(new double[1], new double[1], new double[] { radius }, false);
    }

    /** Returns the number of discs; the ends of a bar count as two. */
    int size() {
        return x.length;
    }

    /** Returns the distance from the origin of the frame to the outermost point. */
    double reach() {
        double reach = 0;
        for (int i = 0; i < size(); i++) {
            reach = Math.max(reach, StrictMath.hypot(x[i], y[i]) + radius[i]);
        }
        return reach;
    }

    /** Returns the distance from the x axis to the point farthest above or below it. */
    double halfHeight() {
        double half = 0;
        for (int i = 0; i < size(); i++) {
            half = Math.max(half, Math.abs(y[i]) + radius[i]);
        }
        return half;
    }

    /** Returns a copy in another unit. */
    Shape times(double factor) {
        return new Shape(times(x, factor), times(y, factor), times(radius, factor), bar);
    }

    private static double[] times(double[] numbers, double factor) {
        return Arrays.stream(numbers).map(number -> number * factor).toArray();
    }
}
