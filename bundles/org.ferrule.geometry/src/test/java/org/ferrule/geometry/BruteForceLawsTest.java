/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The search for many discs against a plain method of another kind: neither finds what the other rules out. */
class BruteForceLawsTest {
    private static final double CLOSE = 1.01;

    @Test
    void nothingSmallerIsFoundByJostling() {
        assertClose(compare(4, 100, 8) + compare(5, 60, 8), 160);
    }

    @Test
    @Tag("slow")
    void nothingSmallerIsFoundByMuchJostling() {
        assertClose(compare(4, 1500, 100), 1500);
        assertClose(compare(5, 1000, 150), 1000);
        assertClose(compare(6, 600, 300), 600);
        assertClose(compare(7, 100, 500), 100);
    }

    private static void assertClose(int close, int cases) {
        assertTrue(close >= cases * 0.8, () -> close + " of " + cases + " close, so jostling says little");
    }

    /** Returns in how many cases jostling came close to the search. */
    private static int compare(int count, int cases, int tries) {
        Random random = Discs.random();
        int close = 0;
        for (int i = 0; i < cases; i++) {
            List<Length> diameters = new ArrayList<>();
            random.longs(count, 600_000, 7_500_000).forEach(diameter -> diameters.add(new Length(diameter)));
            if (random.nextBoolean()) {
                diameters.set(1, diameters.get(0));
            }
            Enclosure enclosure = EnclosingCircle.discs(diameters);
            double jostled = Jostling.diameter(diameters, random, tries);
            assertTrue(jostled >= enclosure.lowerDiameter().mm() * (1 - 1e-12), () -> "proved too much: " + diameters);
            assertTrue(jostled >= enclosure.upperDiameter().mm() * (1 - 1e-6),
                    () -> "missed " + jostled + " of " + diameters + ": " + enclosure);
            close += jostled < enclosure.upperDiameter().mm() * CLOSE ? 1 : 0;
        }
        return close;
    }
}
