/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpreadTest {

    @Test
    void leavesThingsInPlaceThatDoNotTouch() {
        assertEquals(List.of(10.0, 30.0), Spread.middles(List.of(10.0, 30.0), List.of(5.0, 5.0), 0, 100));
    }

    @Test
    void pushesNeighboursApartEvenly() {
        assertEquals(List.of(47.5, 52.5), Spread.middles(List.of(50.0, 50.0), List.of(5.0, 5.0), 0, 100));
    }

    @Test
    void staysInItsRow() {
        assertEquals(List.of(92.5, 97.5), Spread.middles(List.of(99.0, 100.0), List.of(5.0, 5.0), 0, 100));
        assertEquals(List.of(2.5, 7.5), Spread.middles(List.of(0.0, 1.0), List.of(5.0, 5.0), 0, 100));
    }

    @ParameterizedTest
    @ValueSource(longs = { 1, 2, 3, 4, 5 })
    void neverOverlaps(long seed) {
        Random random = new Random(seed);
        List<Double> wanted = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            wanted.add(random.nextDouble() * 100);
            widths.add(1 + random.nextDouble() * 6);
        }
        wanted.sort(Double::compare);
        List<Double> middles = Spread.middles(wanted, widths, 0, 100);
        for (int i = 1; i < middles.size(); i++) {
            double gap = middles.get(i) - middles.get(i - 1) - (widths.get(i) + widths.get(i - 1)) / 2;
            assertTrue(gap > -1e-9, "gap " + gap);
        }
    }
}
