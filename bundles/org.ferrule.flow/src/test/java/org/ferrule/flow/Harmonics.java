/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

/** The series of Piercy, Hooper and Winny, Phil Mag 1933, as White, Viscous Fluid Flow, prints it (from memory). */
final class Harmonics {

    private Harmonics() {
    }

    /** Returns the share for a lumen of radius 1; e between 0 and 1, both excluded. */
    static double share(double b, double e) {
        double c = e * (1 - b);
        double f = (1 - b * b + c * c) / (2 * c);
        double m = Math.sqrt(f * f - 1);
        double big = Math.log((f - c + m) / (f - c - m)) / 2;
        double small = Math.log((f + m) / (f - m)) / 2;
        double sum = 0;
        double term = 1;
        for (int n = 1; term > 1e-18; n++) {
            term = n * Math.exp(-n * (big + small)) / Math.sinh(n * (big - small));
            sum += term;
        }
        return 1 - Math.pow(b, 4) - 4 * c * c * m * m / (big - small) - 8 * c * c * m * m * sum;
    }
}
