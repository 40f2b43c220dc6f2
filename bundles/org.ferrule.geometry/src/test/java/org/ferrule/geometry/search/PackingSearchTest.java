/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import org.ferrule.geometry.search.Arrangement.Centre;
import org.junit.jupiter.api.Test;

/** The search in doubles. */
class PackingSearchTest {
    private static final Shape PAIR = new Shape(new double[] { -0.5, 0.5 }, new double[2], new double[] { 0.5, 0.5 },
            false);

    @Test
    void findsTheSameEveryTime() {
        List<Shape> shapes = List.of(Shape.disc(1), Shape.disc(0.9), Shape.disc(0.7), Shape.disc(0.65), PAIR);
        assertEquals(PackingSearch.search(shapes, 30, radius -> false),
                PackingSearch.search(shapes, 30, radius -> false));
    }

    @Test
    void endsWhenEnoughIsKnown() {
        List<Shape> shapes = Collections.nCopies(5, Shape.disc(20));
        int[] asked = new int[1];
        double radius = PackingSearch.search(shapes, 1000, r -> ++asked[0] > 0).radius();
        assertEquals(1, asked[0]);
        // 5 equal discs: 1 + sqrt(2 (1 + 1/sqrt 5)), Graham 1968
        assertTrue(radius >= 54.026032);
    }

    /** A ring of five round a sixth, which chance finds in one of eighty; the best of twelve thousand descents. */
    @Test
    void findsAnOrderThatChanceFindsLate() {
        List<Shape> ring = DoubleStream.of(1.6423863, 1.4716767, 1.427973, 1.3157003, 1.2168943, 0.606988)
                .mapToObj(diameter -> Shape.disc(diameter / 2)).toList();
        int[] found = new int[1];
        double best = 3.819706106 / 2;
        assertEquals(best, PackingSearch.search(ring, 130, r -> {
            found[0]++;
            return r < best * (1 + 1e-8);
        }).radius(), 1e-8);
        assertTrue(found[0] > 1);
    }

    @Test
    void goesOnUntilDescentsAreUsedUp() {
        List<Shape> nine = DoubleStream.of(1, 0.9, 0.8, 0.75, 0.7, 0.6, 0.5, 0.45, 0.4).mapToObj(Shape::disc).toList();
        double after = PackingSearch.search(nine, 8, radius -> false).radius();
        double later = PackingSearch.search(nine, 400, radius -> false).radius();
        assertTrue(later < after * (1 - 1e-4), () -> later + " after " + after);
    }

    @Test
    void moreDescentsFindNothingWorse() {
        List<Shape> shapes = List.of(Shape.disc(1), Shape.disc(0.9), Shape.disc(0.8), Shape.disc(0.65),
                Shape.disc(0.6), Shape.disc(0.55));
        double few = PackingSearch.search(shapes, 2, radius -> false).radius();
        double many = PackingSearch.search(shapes, 100, radius -> false).radius();
        assertTrue(many <= few);
    }

    @Test
    void fillsWhatFixedBodiesLeave() {
        List<Shape> shapes = List.of(Shape.disc(1), Shape.disc(1), Shape.disc(0.6), Shape.disc(0.6));
        Arrangement start = new Arrangement(
                List.of(new Centre(-1, 0), new Centre(1, 0), new Centre(0.3, 0.9), new Centre(0, -0.8)), 2);
        Arrangement filled = PackingSearch.fill(shapes, start, 2).orElseThrow();
        assertEquals(start.discs().subList(0, 2), filled.discs().subList(0, 2));
        for (Centre centre : filled.discs().subList(2, 4)) {
            assertTrue(Math.hypot(centre.x() - 1, centre.y()) > 1.6 - 1e-8);
            assertTrue(Math.hypot(centre.x(), centre.y()) < 1.4 + 1e-8);
        }
        assertFalse(PackingSearch.fill(List.of(Shape.disc(1), Shape.disc(1), Shape.disc(0.9)),
                new Arrangement(start.discs().subList(0, 3), 2), 2).isPresent());
    }

    @Test
    void settlesCloseBy() {
        Arrangement start = new Arrangement(List.of(new Centre(-1.2, 0.1), new Centre(1.1, 0)), 2.5);
        Arrangement settled = PackingSearch.settle(List.of(Shape.disc(1), Shape.disc(1)), start).orElseThrow();
        assertEquals(2, settled.radius(), 1e-8);
        assertTrue(settled.discs().get(0).x() < 0);
    }

    @Test
    void settlesInAnyUnit() {
        Shape pair = PAIR.times(20);
        Arrangement start = new Arrangement(List.of(new Centre(0, -9), new Centre(2, 11), new Centre(-18, 1)), 30);
        Arrangement settled = PackingSearch.settle(List.of(pair, Shape.disc(10)), start).orElseThrow();
        // 3 equal discs: 1 + 2/sqrt 3
        assertEquals(21.5470054, settled.radius(), 1e-6);
        assertTrue(settled.discs().get(1).y() > settled.discs().get(0).y());
    }

    @Test
    void pileIsNeverOverlapping() {
        Shape low = new Shape(new double[] { -2, 2 }, new double[2], new double[] { 0.5, 0.5 }, true);
        Arrangement pile = Arrangement.pile(List.of(low, Shape.disc(1), low));
        assertEquals(List.of(new Centre(-2, -1.5), new Centre(2, -1.5), new Centre(0, 0), new Centre(-2, 1.5),
                new Centre(2, 1.5)), pile.discs());
        assertEquals(3, pile.radius());
        Shape high = new Shape(new double[1], new double[] { -1 }, new double[] { 0.5 }, false);
        assertEquals(new Centre(0, -1), Arrangement.pile(List.of(high)).discs().get(0));
    }

    @Test
    void rigidBodiesKeepTheirShapeWhereTheyAreFitted() {
        Shape shape = new Shape(new double[] { 1, 2, 2 }, new double[] { 1, 1, 3 }, new double[] { 0.1, 0.2, 0.3 },
                false);
        // The shape turned by a right angle and moved by (10, 20); then the same, spread.
        List<Centre> turned = List.of(new Centre(9, 21), new Centre(9, 22), new Centre(7, 22));
        Arrangement fitted = new Arrangement(turned, 1).fitted(List.of(shape));
        for (int i = 0; i < 3; i++) {
            assertEquals(turned.get(i).x(), fitted.discs().get(i).x(), 1e-12);
            assertEquals(turned.get(i).y(), fitted.discs().get(i).y(), 1e-12);
        }
        assertEquals(new Centre(4, 5), new Arrangement(List.of(new Centre(4, 5)), 1)
                .fitted(List.of(Shape.disc(1))).discs().get(0));
    }
}
