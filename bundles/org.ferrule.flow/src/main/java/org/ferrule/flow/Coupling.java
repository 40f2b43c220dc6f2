/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

/**
 * What the multipoles of one disc (the source), and their images in the wall, add to the harmonics along another or the
 * same disc (the target). Writes one block of the matrix of {@link Multipoles}.
 */
final class Coupling {
    private final int terms;
    private final boolean self;
    private final Complex direct;
    private final Complex image;
    private final double mean;
    private final MobiusPowers directs;
    private final MobiusPowers images;

    Coupling(Circle source, Circle target, int terms) {
        this.terms = terms;
        Complex between = target.centre().minus(source.centre());
        Complex mirror = new Complex(1, 0).minus(source.centre().conjugate().times(target.centre()));
        self = source == target;
        image = source.centre().conjugate().times(target.radius()).over(mirror);
        images = new MobiusPowers(target.centre().times(source.radius()).over(mirror),
                new Complex(source.radius() * target.radius(), 0).over(mirror), image, terms);
        direct = self ? new Complex(0, 0) : new Complex(-target.radius(), 0).over(between);
        directs = new MobiusPowers(self ? direct : new Complex(source.radius(), 0).over(between), new Complex(0, 0),
                direct, terms);
        mean = Math.log(mirror.size()) - Math.log(self ? source.radius() : between.size());
    }

    /** Writes the block whose upper left corner is at that row and column. */
    void write(double[][] matrix, int row, int column) {
        writeSource(matrix, row, column);
        for (int m = 1; m <= terms; m++) {
            int c = column + 2 * m - 1;
            double scale = 1 / Math.sqrt(m);
            matrix[row][c] = scale * (directs.re(m, 0) - images.re(m, 0));
            matrix[row][c + 1] = -scale * (directs.im(m, 0) + images.im(m, 0));
            for (int n = 1; n <= terms; n++) {
                writePair(matrix, row + 2 * n - 1, n, c, m);
            }
        }
        for (int k = 1; self && k <= 2 * terms; k++) {
            matrix[row + k][column + k] += 1;
        }
    }

    /** The logarithm about the source. */
    private void writeSource(double[][] matrix, int row, int column) {
        matrix[row][column] = mean;
        Complex directPower = new Complex(1, 0);
        Complex imagePower = directPower;
        for (int n = 1; n <= terms; n++) {
            directPower = directPower.times(direct);
            imagePower = imagePower.times(image);
            Complex harmonic = directPower.minus(imagePower).times(1 / Math.sqrt(n));
            matrix[row + 2 * n - 1][column] = harmonic.re();
            matrix[row + 2 * n][column] = -harmonic.im();
        }
    }

    private void writePair(double[][] matrix, int row, int n, int column, int m) {
        double scale = Math.sqrt((double) n / m);
        matrix[row][column] = scale * (directs.re(m, n) - images.re(m, n));
        matrix[row + 1][column] = -scale * (directs.im(m, n) - images.im(m, n));
        matrix[row][column + 1] = -scale * (directs.im(m, n) + images.im(m, n));
        matrix[row + 1][column + 1] = -scale * (directs.re(m, n) + images.re(m, n));
    }
}
