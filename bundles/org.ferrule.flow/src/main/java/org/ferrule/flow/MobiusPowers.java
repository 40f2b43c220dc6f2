/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

/**
 * The Taylor coefficients of the powers of (a + b z) / (1 - t z), in which both a multipole seen from another disc and
 * its image in the wall can be written. Each is found from two or three others by sums alone.
 */
final class MobiusPowers {
    private final double[][] re;
    private final double[][] im;

    /** Works out the coefficients of z^0 .. z^terms of the powers 0 .. terms. */
    MobiusPowers(Complex a, Complex b, Complex t, int terms) {
        re = new double[terms + 1][terms + 1];
        im = new double[terms + 1][terms + 1];
        re[0][0] = 1;
        for (int m = 1; m <= terms; m++) {
            add(m, 0, a, m - 1, 0);
            for (int n = 1; n <= terms; n++) {
                add(m, n, t, m, n - 1);
                add(m, n, a, m - 1, n);
                add(m, n, b, m - 1, n - 1);
            }
        }
    }

    private void add(int m, int n, Complex factor, int fromM, int fromN) {
        re[m][n] += factor.re() * re[fromM][fromN] - factor.im() * im[fromM][fromN];
        im[m][n] += factor.re() * im[fromM][fromN] + factor.im() * re[fromM][fromN];
    }

    double re(int power, int n) {
        return re[power][n];
    }

    double im(int power, int n) {
        return im[power][n];
    }
}
