/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.mechanics;

/** Ranges of figures. */
final class Check {

    private Check() {
    }

    static double positive(String name, double value) {
        return require(name, value, value > 0 && value < Double.POSITIVE_INFINITY, "above zero");
    }

    static double notNegative(String name, double value) {
        return require(name, value, value >= 0 && value < Double.POSITIVE_INFINITY, "zero or more");
    }

    static double require(String name, double value, boolean allowed, String range) {
        if (!allowed) {
            throw new IllegalArgumentException(name + " " + value + ": must be " + range);
        }
        return value;
    }
}
