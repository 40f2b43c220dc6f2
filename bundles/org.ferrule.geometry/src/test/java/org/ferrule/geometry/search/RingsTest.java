/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The orders of discs round the rim. */
class RingsTest {
    private static final double CIRCLE = 3;

    /** (n-1)!/2 orders of n discs in a ring; with one or two inside the same of the others. */
    @ParameterizedTest
    @CsvSource({ "0, 0", "2, 0", "3, 1", "4, 7", "5, 37", "6, 177", "7, 0", "16, 0" })
    void countsEveryOrderOnce(int discs, int orders) {
        assertEquals(orders, new Rings(falling(discs)).size());
    }

    @Test
    void noOrderComesTwice() {
        Rings rings = new Rings(falling(6));
        Set<List<Integer>> seen = new HashSet<>();
        for (int i = 0; i < rings.size(); i++) {
            List<Integer> order = order(written(rings, i, 6));
            assertTrue(seen.add(order), order::toString);
        }
    }

    @Test
    void discsTouchTheRimAndShareItByTheirSizes() {
        Rings rings = new Rings(new double[] { 1, 0.5, 0.25, 0.25 });
        double[] variables = written(rings, 0, 4);
        assertEquals(CIRCLE, variables[8]);
        assertEquals(List.of(0, 1, 2, 3), order(variables));
        assertEquals(90, degrees(variables, 0), 1e-9);
        assertEquals(-135, degrees(variables, 1), 1e-9);
        assertEquals(2.5, distance(variables, 1), 1e-12);
        assertEquals(-67.5, degrees(variables, 2), 1e-9);
        assertEquals(-22.5, degrees(variables, 3), 1e-9);
    }

    @Test
    void smallOnesAreInsideFirst() {
        Rings rings = new Rings(falling(5));
        assertEquals(5, order(written(rings, 11, 5)).size());
        assertEquals(List.of(0, 1, 2, 3), order(written(rings, 12, 5)));
        assertEquals(List.of(0, 1, 2, 4), order(written(rings, 15, 5)));
        double[] two = written(rings, 18, 5);
        assertEquals(List.of(0, 1, 2), order(two));
        assertEquals(0.1 * 2 / 5, distance(two, 3), 1e-12);
        assertTrue(two[6] * two[8] < 0, "those inside lie apart");
    }

    private static double[] falling(int discs) {
        return IntStream.range(0, discs).mapToDouble(i -> (double) (discs - i) / discs).toArray();
    }

    private static double[] written(Rings rings, int which, int discs) {
        double[] variables = new double[2 * discs + 1];
        Arrays.fill(variables, Double.NaN);
        rings.write(which, CIRCLE, variables);
        assertTrue(Arrays.stream(variables).allMatch(Double::isFinite));
        return variables;
    }

    /** The discs far from the middle, by their angles, the first of them first. */
    private static List<Integer> order(double[] variables) {
        return IntStream.range(0, variables.length / 2).filter(i -> distance(variables, i) > 1).boxed()
                .sorted(Comparator.comparing(i -> (degrees(variables, i) + 360) % 360)).toList();
    }

    private static double degrees(double[] variables, int disc) {
        return Math.toDegrees(Math.atan2(variables[2 * disc + 1], variables[2 * disc]));
    }

    private static double distance(double[] variables, int disc) {
        return Math.hypot(variables[2 * disc], variables[2 * disc + 1]);
    }
}
