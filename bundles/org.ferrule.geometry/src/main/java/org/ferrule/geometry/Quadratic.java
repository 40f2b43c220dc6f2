/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

/** Real roots of quadratics, without the loss of digits of the school formula. */
final class Quadratic {

    private Quadratic() {
    }

    /** Returns the real roots of a t^2 + b t + c, none if there are none, one if a is zero. */
    static double[] roots(double a, double b, double c) {
        double discriminant = b * b - 4 * a * c;
        if (discriminant < 0 || a == 0 && b == 0) {
            return new double[0];
        }
        double q = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
        if (a == 0) {
            return new double[] { c / q };
        }
        return q == 0 ? new double[] { 0 } : new double[] { q / a, c / q };
    }
}
