/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.List;
import org.ferrule.quantity.Length;

/**
 * Equal discs: k of them need a circle of at least a known multiple of their diameter, and so do k discs that are no
 * smaller. The multiples of 2 to 14 discs are proved in the literature: Graham 1968 (to 6), Pirl 1969 (8 to 10),
 * Melissen 1994 (11), Fodor 2000 and 2003 (12, 13), Ekanayake and LaFountain 2024 (14).
 */
final class EqualDiscs {
    /** By number of discs; those without a closed form are rounded down. */
    private static final double[] MULTIPLES = { 0, 1, 2, 1 + 2 / Math.sqrt(3), 1 + Math.sqrt(2),
        1 + Math.sqrt(2 * (1 + 1 / Math.sqrt(5))), 3, 3, 1 + 1 / Math.sin(Math.PI / 7),
        1 + Math.sqrt(2 * (2 + Math.sqrt(2))), 3.813025625, 1 + 1 / Math.sin(Math.PI / 9), 4.029601925,
        2 + Math.sqrt(5), 4.328428545 };

    private EqualDiscs() {
    }

    /** Returns a diameter that the discs need at least. */
    static Length lower(List<Length> falling) {
        Length lower = Length.ZERO;
        for (int count = 1; count <= falling.size(); count++) {
            double multiple = MULTIPLES[Math.min(count, MULTIPLES.length - 1)];
            lower = lower.max(Bounds.down(multiple * falling.get(count - 1).thirdNanometres()));
        }
        return lower;
    }
}
