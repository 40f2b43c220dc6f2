/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Test;

/** Circles round discs of 1 in a ring, against those of Graham et al. (1998). */
class RingTest {
    private static final double FINE = 1e-6;
    private static final double OF_FOUR = 1 + Math.sqrt(2);
    private static final double OF_FIVE = 2.7013016;

    private static List<Double> equal(int number) {
        return Collections.nCopies(number, 1.0);
    }

    @Test
    void fewDiscsLieInLine() {
        assertEquals(0, Ring.enough(List.of()));
        assertEquals(1, Ring.atLeast(equal(1)));
        assertEquals(2, Ring.enough(equal(2)));
        assertEquals(2, Ring.atLeast(equal(2)));
    }

    @Test
    void ringsOfEqualDiscsAreThePublishedCircles() {
        assertEquals(1 + 2 / Math.sqrt(3), Ring.enough(equal(3)), FINE);
        assertEquals(OF_FOUR, Ring.enough(equal(4)), FINE);
        assertEquals(OF_FIVE, Ring.enough(equal(5)), FINE);
        assertEquals(3, Ring.enough(equal(6)), FINE);
    }

    @Test
    void theThreeLargestAreNeededAtLeast() {
        assertEquals(1 + 2 / Math.sqrt(3), Ring.atLeast(List.of(0.2, 1.0, 0.3, 1.0, 1.0)), FINE);
    }

    @Test
    void aDiscThatHidesBetweenTwoNeedsNothing() {
        assertEquals(2, Ring.enough(List.of(0.5, 1.0, 1.0)), FINE);
        assertEquals(2, Ring.atLeast(List.of(1.0, 0.5, 1.0)), FINE);
        assertTrue(Ring.atLeast(List.of(1.0, 0.7, 1.0)) > 2 + FINE, "2/3 is the largest that hides");
    }

    @Test
    void orderOfTheDiscsDoesNotMatter() {
        assertEquals(Ring.enough(List.of(1.0, 0.4, 0.9, 0.5)), Ring.enough(List.of(0.4, 0.5, 0.9, 1.0)), FINE);
        assertTrue(Ring.enough(List.of(1.0, 0.9, 0.5, 0.4)) < 2.2, "in the best of all orders");
    }

    @Test
    void ofManyDiscsTheTwoSmallestCountAsOne() {
        assertEquals(Ring.enough(List.of(1.0, 1.0, 1.0, 1.0, 1.0, 0.5)),
                Ring.enough(List.of(1.0, 1.0, 1.0, 1.0, 1.0, 0.3, 0.2)), FINE);
    }

    @Test
    void whatIsWideEnoughIsNotNarrowed() {
        assertEquals(2.5, Ring.enough(equal(4), 2.5));
        assertEquals(OF_FOUR, Ring.enough(equal(4), 2.4), FINE);
        assertEquals(4, Ring.enough(equal(4), 5), "in line is enough");
    }
}
