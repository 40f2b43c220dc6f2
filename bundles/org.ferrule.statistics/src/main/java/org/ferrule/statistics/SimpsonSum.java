/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** A sum that stands for an integral over a range, by Simpson's rule. */
final class SimpsonSum {
    private final double from;
    private final double step;
    private final int steps;

    /**
     * Prepares the sum.
     *
     * @param from the lower end
     * @param to the upper end
     * @param steps an even number
     */
    SimpsonSum(double from, double to, int steps) {
        this.from = from;
        this.step = (to - from) / steps;
        this.steps = steps;
    }

    /** Returns where the function is to be taken. */
    double[] places() {
        return IntStream.rangeClosed(0, steps).mapToDouble(i -> from + i * step).toArray();
    }

    /** Returns what the function counts at each of the places, times a density. */
    double[] weights(DoubleUnaryOperator density) {
        double[] places = places();
        return IntStream.rangeClosed(0, steps).mapToDouble(i -> coefficient(i) * step / 3
                * density.applyAsDouble(places[i])).toArray();
    }

    private int coefficient(int i) {
        if (i == 0 || i == steps) {
            return 1;
        }
        return i % 2 == 1 ? 4 : 2;
    }
}
