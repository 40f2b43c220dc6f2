/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Which stations of a lumen and of a device meet on the way. */
class WindowTest {

    private static void assertCorners(Window window, long[]... expected) {
        assertArrayEquals(expected, window.corners().toArray(long[][]::new));
    }

    private static long[] at(long x, long s) {
        return new long[] { x, s };
    }

    @Test
    void allOfBothMeetsWhereTheWayIsLong() {
        assertCorners(new Window(5, 10, 3, 20, 30), at(5, 3), at(10, 3), at(10, 20), at(5, 20));
        assertEquals(20, new Window(5, 10, 3, 20, 30).lastS());
    }

    @Test
    void whatDoesNotComeFarEnoughIsCutOff() {
        assertCorners(new Window(5, 10, 3, 20, 29), at(5, 3), at(10, 3), at(10, 19), at(9, 20), at(5, 20));
        assertCorners(new Window(5, 10, 3, 20, 25), at(5, 3), at(10, 3), at(10, 15), at(5, 20));
        assertCorners(new Window(5, 10, 3, 20, 13), at(5, 3), at(10, 3), at(5, 8));
        assertCorners(new Window(5, 10, 3, 20, 10), at(5, 3), at(7, 3), at(5, 5));
        assertEquals(5, new Window(5, 10, 3, 20, 10).lastS());
    }

    @Test
    void stripsLieSideBySideAndTheLastOneTakesTheRest() {
        assertEquals(List.of(new Window(100, 110, 3, 20, 900), new Window(110, 120, 3, 20, 900),
                new Window(120, 132, 3, 20, 900)), new Window(100, 132, 3, 20, 900).strips(3));
        assertEquals(List.of(new Window(100, 132, 3, 20, 900)), new Window(100, 132, 3, 20, 900).strips(1));
    }

    @Test
    void stripsToWhichTheDeviceDoesNotComeAreLeftOut() {
        assertEquals(List.of(new Window(100, 110, 3, 20, 113)), new Window(100, 132, 3, 20, 113).strips(3));
        assertEquals(2, new Window(100, 132, 3, 20, 114).strips(3).size());
        assertEquals(1, new Window(100, 132, 3, 20, 100).strips(3).size(), "the first one always counts");
    }
}
