/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import static org.ferrule.flow.Sections.circle;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The search for the best and the worst arrangement, and the room in which it moves. */
class ExtremeTest {

    /** Four equal discs hinder most in a square about the centre. */
    @Test
    void fourWiresSpreadInASquare() {
        List<Circle> row = IntStream.range(0, 4).mapToObj(i -> circle(0.41 * i - 0.6, 0, 0.2)).toList();
        List<Circle> least = Extreme.least(Starts.from(row));
        double distance = least.get(0).centre().size();
        least.forEach(disc -> assertEquals(distance, disc.centre().size(), 1e-2));
        List<Circle> square = IntStream.range(0, 4).mapToObj(i -> i * Math.PI / 2)
                .map(angle -> circle(distance * Math.cos(angle), distance * Math.sin(angle), 0.2)).toList();
        assertEquals(1, share(least) / share(square), 1e-3);
    }

    /** Four equal discs hinder least in a row along the wall. */
    @Test
    void fourWiresHideInARowAlongTheWall() {
        List<Circle> row = IntStream.range(0, 4).mapToObj(i -> circle(0.41 * i - 0.6, 0, 0.2)).toList();
        double step = 2 * Math.asin(0.2 / 0.8);
        List<Circle> wall = IntStream.range(0, 4).mapToObj(i -> i * step)
                .map(angle -> circle(0.8 * Math.cos(angle), 0.8 * Math.sin(angle), 0.2)).toList();
        assertEquals(1, share(Extreme.most(Starts.from(row))) / share(wall), 1e-3);
    }

    private static double share(List<Circle> discs) {
        return new Multipoles(discs, 24).share();
    }

    @Test
    void startsAreTheSameEveryTimeAndHaveRoom() {
        List<Circle> known = List.of(circle(-0.4, 0, 0.5), circle(0.5, 0, 0.4), circle(0, 0.7, 0.1));
        List<List<Circle>> starts = Starts.from(known);
        assertEquals(starts, Starts.from(known));
        assertEquals(known, starts.get(0));
        assertTrue(starts.size() > 15, starts.size() + " starts");
        starts.forEach(ExtremeTest::assertRoom);
    }

    private static void assertRoom(List<Circle> discs) {
        for (int i = 0; i < discs.size(); i++) {
            Circle disc = discs.get(i);
            assertTrue(disc.excess() <= 1e-9, discs::toString);
            assertTrue(discs.subList(0, i).stream().allMatch(other -> disc.overlap(other) <= 1e-9), discs::toString);
        }
    }

    @Test
    void settlingMovesNoMoreThanNeeded() {
        List<Circle> apart = List.of(circle(-0.3, 0, 0.2), circle(0.3, 0, 0.2));
        assertEquals(apart, Room.settle(apart).orElseThrow());
        List<Circle> settled = Room.settle(List.of(circle(-0.1, 0, 0.2), circle(0.1, 0, 0.2))).orElseThrow();
        assertEquals(-0.2, settled.get(0).centre().re(), 1e-9);
        assertEquals(0.2, settled.get(1).centre().re(), 1e-9);
        assertEquals(0.8, Room.settle(List.of(circle(1.5, 0, 0.2))).orElseThrow().get(0).centre().re(), 1e-9);
    }

    @Test
    void settlingPartsDiscsInOnePlace() {
        assertRoom(Room.settle(List.of(circle(0, 0, 0.4), circle(0, 0, 0.4))).orElseThrow());
    }

    @Test
    void settlingGivesUpWhereThereIsNoRoom() {
        assertTrue(Room.settle(List.of(circle(0, 0, 0.6), circle(0.5, 0, 0.6))).isEmpty());
    }
}
