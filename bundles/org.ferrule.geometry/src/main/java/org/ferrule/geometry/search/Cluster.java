/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Builds clusters: body after body, the larger ones rather first, each in touch with two others and close to the
 * middle of those. Bodies count as the discs that they need to turn in.
 */
final class Cluster {
    private final Parts parts;
    private final SplittableRandom random;
    private final int size;
    private final double[] reach;
    private final double[] x;
    private final double[] y;
    private int[] order;
    /** The best and the second-best place: distance from the middle, x, y. */
    private final double[] best = new double[3];
    private final double[] second = new double[3];

    Cluster(Parts parts, SplittableRandom random) {
        this.parts = parts;
        this.random = random;
        size = parts.first.length;
        reach = parts.shapes.stream().mapToDouble(Shape::reach).toArray();
        x = new double[size];
        y = new double[size];
    }

    /** Writes the places of a new cluster and a radius that it just does not fit into. */
    void write(double[] variables) {
        shuffle();
        x[order[0]] = 0;
        y[order[0]] = 0;
        for (int count = 1; count < size; count++) {
            add(count);
        }
        double[] middle = middle(size);
        double radius = 0;
        for (int i = 0; i < size; i++) {
            variables[parts.first[i]] = x[i] - middle[0];
            variables[parts.first[i] + 1] = y[i] - middle[1];
            radius = Math.max(radius, StrictMath.hypot(x[i] - middle[0], y[i] - middle[1]) + reach[i]);
        }
        variables[parts.variables - 1] = radius * 0.97;
    }

    private void shuffle() {
        double[] keys = Arrays.stream(reach).map(r -> random.nextDouble() - StrictMath.log(r) / 2).toArray();
        order = IntStream.range(0, size).boxed()
                .sorted(Comparator.comparingDouble(i -> keys[i])).mapToInt(i -> i).toArray();
    }

    private void add(int count) {
        int body = order[count];
        if (count == 1) {
            x[body] = reach[order[0]] + reach[body];
            y[body] = 0;
            return;
        }
        double[] middle = middle(count);
        best[0] = Double.POSITIVE_INFINITY;
        second[0] = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                if (i != j) {
                    offer(body, order[i], order[j], count, middle);
                }
            }
        }
        double[] place = second[0] < Double.POSITIVE_INFINITY && random.nextBoolean() ? second : best;
        x[body] = place[1];
        y[body] = place[2];
    }

    /** The place on the left of the line between two bodies, where the new one touches both. */
    private void offer(int body, int i, int j, int count, double[] middle) {
        double fromI = reach[i] + reach[body];
        double fromJ = reach[j] + reach[body];
        double dx = x[j] - x[i];
        double dy = y[j] - y[i];
        double squared = dx * dx + dy * dy;
        double along = (fromI * fromI - fromJ * fromJ + squared) / (2 * squared);
        double across = fromI * fromI / squared - along * along;
        if (across < 0) {
            return;
        }
        double left = Math.sqrt(across);
        double px = x[i] + along * dx - left * dy;
        double py = y[i] + along * dy + left * dx;
        double distance = StrictMath.hypot(px - middle[0], py - middle[1]);
        if (distance < second[0] && isFree(body, px, py, count)) {
            keep(distance, px, py);
        }
    }

    private void keep(double distance, double px, double py) {
        double[] place = second;
        if (distance < best[0]) {
            System.arraycopy(best, 0, second, 0, best.length);
            place = best;
        }
        place[0] = distance;
        place[1] = px;
        place[2] = py;
    }

    private boolean isFree(int body, double px, double py, int count) {
        for (int k = 0; k < count; k++) {
            double least = (reach[order[k]] + reach[body]) * (1 - 1e-9);
            double dx = px - x[order[k]];
            double dy = py - y[order[k]];
            if (dx * dx + dy * dy < least * least) {
                return false;
            }
        }
        return true;
    }

    private double[] middle(int count) {
        double sum = 0;
        double[] middle = new double[2];
        for (int k = 0; k < count; k++) {
            int i = order[k];
            double area = reach[i] * reach[i];
            sum += area;
            middle[0] += area * x[i];
            middle[1] += area * y[i];
        }
        middle[0] /= sum;
        middle[1] /= sum;
        return middle;
    }
}
