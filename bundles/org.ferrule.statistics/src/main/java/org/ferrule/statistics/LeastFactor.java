/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import java.util.function.DoubleUnaryOperator;

/** The least factor that gives a confidence which grows with the factor. */
final class LeastFactor {
    private static final double RELATIVE_ACCURACY = 1e-9;

    private LeastFactor() {
    }

    /** Returns the factor above zero, to nine digits and rounded up. */
    static double reaching(double confidence, DoubleUnaryOperator confidenceOf) {
        double below = 0;
        double above = 1;
        while (confidenceOf.applyAsDouble(above) < confidence) {
            below = above;
            above *= 2;
        }
        while (above - below > RELATIVE_ACCURACY * above) {
            double middle = (below + above) / 2;
            if (confidenceOf.applyAsDouble(middle) < confidence) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return above;
    }
}
