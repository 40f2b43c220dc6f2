/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import org.apache.commons.numbers.gamma.Erfc;
import org.apache.commons.numbers.gamma.InverseErfc;

/** The standard normal distribution. */
final class Normal {
    private static final double ROOT_OF_2 = Math.sqrt(2);

    private Normal() {
    }

    /** Returns the share below x. */
    static double below(double x) {
        return Erfc.value(-x / ROOT_OF_2) / 2;
    }

    /** Returns the x below which the share lies, 0 to 1. */
    static double quantile(double share) {
        return -ROOT_OF_2 * InverseErfc.value(2 * share);
    }

    static double density(double x) {
        return Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
    }
}
