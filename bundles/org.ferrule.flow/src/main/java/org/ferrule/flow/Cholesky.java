/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

/** Solves a symmetric positive definite system; of the matrix, only the lower triangle is read. */
final class Cholesky {
    private final double[][] factor;

    /**
     * Factorises the matrix in its own place.
     *
     * @throws ArithmeticException if it is not positive definite
     */
    Cholesky(double[][] matrix) {
        factor = matrix;
        for (int i = 0; i < factor.length; i++) {
            for (int j = 0; j < i; j++) {
                factor[i][j] = (factor[i][j] - dot(factor[i], factor[j], j)) / factor[j][j];
            }
            double pivot = factor[i][i] - dot(factor[i], factor[i], i);
            if (!(pivot > 0)) {
                throw new ArithmeticException("not positive definite: pivot " + i + " is " + pivot);
            }
            factor[i][i] = Math.sqrt(pivot);
        }
    }

    private static double dot(double[] a, double[] b, int length) {
        double sum = 0;
        for (int k = 0; k < length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }

    double[] solve(double[] right) {
        double[] x = right.clone();
        for (int i = 0; i < x.length; i++) {
            x[i] = (x[i] - dot(factor[i], x, i)) / factor[i][i];
        }
        for (int i = x.length - 1; i >= 0; i--) {
            x[i] /= factor[i][i];
            for (int k = 0; k < i; k++) {
                x[k] -= factor[i][k] * x[i];
            }
        }
        return x;
    }
}
