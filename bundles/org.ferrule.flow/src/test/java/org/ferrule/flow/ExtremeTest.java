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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    /** The thickest of three belongs between the others; a climb alone does not bring it past its neighbour. */
    @Test
    void neighboursChangePlaces() {
        List<Circle> inOrder = onWall(0.2, 0.4, 0.3);
        List<Circle> outOfOrder = onWall(0.4, 0.2, 0.3);
        assertTrue(share(inOrder) > 1.01 * share(new Climb(1, 16, 1e-5, outOfOrder).top()));
        assertEquals(1, share(Extreme.most(List.of(outOfOrder))) / share(inOrder), 1e-3);
    }

    /** A row of three along the wall in which neighbours touch each other, the middle one at the right. */
    private static List<Circle> onWall(double above, double middle, double below) {
        return List.of(beside(middle, above, 1), circle(1 - middle, 0, middle), beside(middle, below, -1));
    }

    /** Its centre is known to lie 1 - r from the lumen's and the sum of the radii from the middle one's. */
    private static Circle beside(double middle, double radius, int side) {
        double x = (Math.pow(1 - radius, 2) + Math.pow(1 - middle, 2) - Math.pow(middle + radius, 2)) / 2
                / (1 - middle);
        return circle(x, side * Math.sqrt(Math.pow(1 - radius, 2) - x * x), radius);
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

    /** Each of three discs comes to lie between the others. */
    @Test
    void rowsLieAlongTheWallInVariousOrders() {
        List<Circle> known = onWall(0.2, 0.15, 0.1);
        List<List<Circle>> rows = Starts.from(known).stream().skip(1)
                .filter(start -> start.stream().allMatch(disc -> Math.abs(disc.excess()) < 1e-6)).toList();
        assertTrue(rows.size() >= 30, rows.size() + " rows");
        for (int i = 0; i < 3; i++) {
            int middle = i;
            assertTrue(rows.stream().anyMatch(row -> touchesBothOthers(row, middle)), "none with the middle " + i);
        }
    }

    private static boolean touchesBothOthers(List<Circle> row, int middle) {
        return row.stream().filter(disc -> Math.abs(disc.overlap(row.get(middle))) < 1e-6).count() == 2;
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

    /** Each gives way by half of the overlap, however near to each other the centres are. */
    @ParameterizedTest
    @ValueSource(doubles = { 0, 1e-12, 1e-6, 0.1 })
    void settlingPartsDiscsInOnePlace(double distance) {
        List<Circle> settled = Room.settle(List.of(circle(distance, 0, 0.4), circle(0, 0, 0.4))).orElseThrow();
        assertRoom(settled);
        settled.forEach(disc -> assertEquals(0.4, Math.abs(disc.centre().re() - distance / 2), 1e-9));
    }

    @Test
    void settlingGivesUpWhereThereIsNoRoom() {
        assertTrue(Room.settle(List.of(circle(0, 0, 0.6), circle(0.5, 0, 0.6))).isEmpty());
    }
}
