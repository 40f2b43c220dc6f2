/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

/** Reads angles. */
final class Angles {

    private Angles() {
    }

    static double degrees(String text) {
        Numbers.Tail tail = Numbers.split(text);
        double number = tail.number().doubleValue();
        return switch (tail.rest()) {
            case "deg", "\u00b0", "degrees" -> number;
            case "rad" -> Math.toDegrees(number);
            default -> throw new IllegalArgumentException("must have a unit (deg, rad)");
        };
    }
}
