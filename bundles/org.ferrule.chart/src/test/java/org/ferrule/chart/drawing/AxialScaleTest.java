/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AxialScaleTest {

    @Test
    void drawsEverythingToScaleWhereAllCanBeSeen() {
        AxialScale scale = AxialScale.of(List.of(0.0, 200.0, 1000.0), 10, 110);
        assertEquals(List.of(), scale.gaps());
        assertEquals(0.1, scale.mmPerMm(), 1e-9);
        assertEquals(30, scale.x(200), 1e-9);
        assertEquals(60, scale.x(500), 1e-9);
    }

    @Test
    void breaksALongStretchSoThatAShortOneCanBeSeen() {
        AxialScale scale = AxialScale.of(List.of(0.0, 4.0, 19.0, 250.0, 1420.0), 0, 150);
        assertTrue(scale.x(4) - scale.x(0) >= 5, "tip: " + scale.x(4));
        assertEquals((scale.x(19) - scale.x(4)) / 15, (scale.x(4) - scale.x(0)) / 4, 1e-9, "one scale for both");
        assertEquals(2, scale.gaps().size());
        assertEquals(150, scale.x(1420), 1e-6);
    }

    @Test
    void aBrokenStretchIsToScaleOnBothSidesOfItsGap() {
        AxialScale scale = AxialScale.of(List.of(0.0, 4.0, 1420.0), 0, 150);
        assertEquals(scale.mmPerMm(), scale.x(5) - scale.x(4), 1e-9);
        assertEquals(scale.mmPerMm(), scale.x(1420) - scale.x(1419), 1e-9);
        assertFalse(scale.shows(700));
        assertTrue(scale.shows(6) && scale.shows(1415));
        assertEquals(4, scale.bends(0, 1420).size() - 1, "both ends, the border, both edges of the gap");
    }

    @Test
    void readsEveryPlaceBack() {
        AxialScale scale = AxialScale.of(List.of(0.0, 4.0, 19.0, 250.0, 1420.0), 0, 150);
        for (double station = -20; station <= 1440; station += 3.7) {
            assertEquals(station, scale.station(scale.beyond(station)), 1e-6);
        }
    }

    @Test
    void takesMinusZeroForZero() {
        AxialScale scale = AxialScale.of(List.of(-100.0, -0.0, 0.0), 0, 100);
        assertEquals(1, scale.mmPerMm(), 1e-9);
    }

    @Test
    void refusesNothingAndNamesIt() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> AxialScale.of(List.of(3.0, 3.0), 0, 10))
                .getMessage().contains("3.0"));
    }

    @ParameterizedTest
    @ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8 })
    void keepsOrderAndFillsTheRoom(long seed) {
        Random random = new Random(seed);
        TreeSet<Double> stations = new TreeSet<>(List.of(0.0));
        for (int i = 0; i < 1 + random.nextInt(9); i++) {
            stations.add(Math.pow(10, random.nextDouble() * 3.3));
        }
        AxialScale scale = AxialScale.of(stations, 5, 140);
        double last = 5;
        for (double station = 0; station <= stations.last(); station += stations.last() / 400) {
            assertTrue(scale.x(station) >= last - 1e-9, "order at " + station);
            last = scale.x(station);
        }
        assertEquals(5, scale.x(0), 1e-6);
        assertEquals(140, scale.x(stations.last()), 1e-3);
    }
}
