/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rectangles and changes of coordinates, counted by hand. */
class BoxTest {

    private static final Box BOX = new Box(2, 3, 10, 4);

    @Test
    void hasItsMiddleHalfwayBetweenItsEdges() {
        assertEquals(new Point(7, 5), BOX.centre());
        assertEquals(new Point(12, 7), BOX.corners().get(2));
    }

    @Test
    void marginIsTakenFromEverySide() {
        assertEquals(new Box(3, 4, 8, 2), BOX.inset(1));
        assertEquals(new Box(1.5, 2.5, 11, 5), BOX.inset(-0.5));
        assertEquals(new Box(4, 5, 6, 0), BOX.inset(2));
        assertThrows(IllegalArgumentException.class, () -> BOX.inset(2.1));
    }

    @ParameterizedTest
    @CsvSource({ "2, 3, true", "12, 7, true", "2, 7, true", "1.99, 5, false", "12.01, 5, false", "7, 2.99, false",
        "7, 7.01, false" })
    void edgeBelongsToTheBox(double xMm, double yMm, boolean inside) {
        assertEquals(inside, BOX.contains(new Point(xMm, yMm)));
    }

    @Test
    void unionHoldsBoth() {
        assertEquals(new Box(-1, 3, 13, 6), BOX.union(new Box(-1, 8, 2, 1)));
        assertEquals(BOX, BOX.union(new Box(4, 4, 1, 1)));
    }

    /** A turn by 90 degrees after a shift: what lay to the right of the origin comes to lie below it. */
    @Test
    void shiftBeforeATurnIsTurnedToo() {
        Transform both = Transform.translation(10, 2).then(Transform.rotation(90));
        assertEquals(0, both.apply(new Point(1, 0)).distanceMm(new Point(-2, 11)), 1e-12);
        assertEquals(0, both.inverse().apply(new Point(-2, 11)).distanceMm(new Point(1, 0)), 1e-12);
        Transform three = both.then(new Transform(1, 0, 0.5, 2, 3, 4));
        assertEquals(0, three.apply(new Point(1, 0)).distanceMm(new Point(-2 + 0.5 * 11 + 3, 22 + 4)), 1e-12);
    }

    @Test
    void areasGrowByTheSquareOfTheScaleWhateverTheSkew() {
        assertEquals(Math.sqrt(5), new Transform(2, 1, 3, 4, 0, 0).scale(), 1e-12);
        assertEquals(2, Transform.scaling(-2, 2).scale(), 1e-12);
    }

    /** Skewed by as much as it is scaled, an area becomes a line. */
    @Test
    void refusesWhatCannotBeUndone() {
        assertThrows(IllegalArgumentException.class, () -> new Transform(2, 4, 1, 2, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> Transform.translation(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> Transform.translation(0, Double.POSITIVE_INFINITY));
        assertEquals(1, new Transform(0, 1, 1, 0, 0, 0).scale(), "mirrored");
    }
}
