/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.sample.TestRules;
import org.junit.jupiter.api.Test;

/** What is alike shares a slot, and a grid keeps a word for every pair of them. */
class SlotsTest {
    private static final ReadDevice A = read("a", "0.9 mm");
    private static final ReadDevice B = read("b", "0.8 mm");
    private static final ReadDevice C = read("c", "0.7 mm");

    private static ReadDevice read(String id, String diameter) {
        return ReadDevice.of(rod(id, DeviceKind.MICROCATHETER, "135 cm", diameter).device(), TestRules.exact().rules());
    }

    private static Places places(List<ReadDevice> now, List<ReadDevice> before) {
        return Places.ofColumns(now, before, true);
    }

    private static Slots<String> slots(String... keys) {
        return Slots.of(List.of(keys), Comparator.naturalOrder());
    }

    @Test
    void likesShareASlotInOrder() {
        Slots<String> slots = slots("thick", "thin", "thick");
        assertEquals(2, slots.count());
        assertEquals(List.of(0, 1, 0), IntStream.range(0, slots.size()).mapToObj(slots::slot).toList());
        assertEquals(List.of(2, 1), List.of(slots.users(0), slots.users(1)));
        assertEquals(List.of(0, 1), List.of(slots.standing(0), slots.standing(1)));
        assertTrue(slots.isNew());
        assertEquals(2, slots.freshCount());
    }

    @Test
    void whatChangesTakesTheSlotOfItsLikesOrAFreeOne() {
        Slots<String> slots = slots("thick", "thin", "wide");
        Places last = places(List.of(A, B, read("c", "1 mm")), List.of(A, B, C));
        Slots<String> like = slots.next(last, i -> "thin");
        assertEquals(1, like.slot(2));
        assertEquals(0, like.freshCount());
        assertEquals(Optional.empty(), like.key(2));
        assertEquals(-1, like.standing(2));
        assertEquals(0, like.users(2));
        Slots<String> other = slots.next(last, i -> "new");
        assertEquals(2, other.slot(2));
        assertEquals(Optional.of("new"), other.key(2));
        assertTrue(other.isFresh(2));
        assertFalse(other.isFresh(0));
        assertFalse(other.isNew());
        assertTrue(other.anyFresh("new"::equals));
        assertFalse(other.anyFresh("thin"::equals));
        assertArrayEquals(new int[] { 2 }, other.freshOf(0));
        assertArrayEquals(new int[] { 0, 1, 2 }, other.slotsOf(0));
    }

    @Test
    void whatComesInGetsANewSlotWhereNoneIsFree() {
        Slots<String> next = slots("thick", "thin").next(places(List.of(A, B, C), List.of(A, B)), i -> "new");
        assertEquals(3, next.count());
        assertEquals(2, next.slot(2));
    }

    @Test
    void slotsAreSparseWhereMostAreFree() {
        Slots<String> slots = slots("one", "three", "two");
        assertFalse(slots.next(places(List.of(A, B), List.of(A, B, C)), i -> "new").isSparse());
        assertTrue(slots.next(places(List.of(A), List.of(A, B, C)), i -> "new").isSparse());
        Slots<String> four = slots("four", "one", "three", "two");
        ReadDevice d = read("d", "0.5 mm");
        assertFalse(four.next(places(List.of(A, B), List.of(A, B, C, d)), i -> "new").isSparse(), "half of them");
    }

    @Test
    void aGridTellsOfEveryCellAndOfNoOther() {
        Slots<String> lines = slots(IntStream.range(0, 40).mapToObj(i -> "l" + i).toArray(String[]::new));
        Slots<String> columns = slots("a", "b");
        CellGrid grid = new CellGrid(lines, columns, Optional.empty());
        assertEquals(40, grid.lines());
        grid.tile(0, 0, new long[CellGrid.SIDE * CellGrid.SIDE]);
        long[] words = new long[CellGrid.SIDE * CellGrid.SIDE];
        words[CellGrid.within(lines.slot(39), 1)] = 7;
        grid.tile(lines.slot(39) / CellGrid.SIDE, 0, words);
        assertEquals(7, grid.word(39, 1));
        assertEquals(0, grid.word(39, 0));
        for (int[] outside : List.of(new int[] { -1, 0 }, new int[] { 40, 0 }, new int[] { 0, -1 },
                new int[] { 0, 2 })) {
            Exception refused = assertThrows(IndexOutOfBoundsException.class,
                    () -> grid.word(outside[0], outside[1]));
            assertTrue(refused.getMessage().contains("40 by 2"), refused.getMessage());
        }
    }

    @Test
    void tilesAreKeptWhereTheGridGrows() {
        Slots<String> few = slots("a");
        Slots<String> many = slots(IntStream.range(0, 40).mapToObj(i -> "c" + i).toArray(String[]::new));
        assertEquals(List.of(0, 1, 1, 2), List.of(CellGrid.tiles(0), CellGrid.tiles(1), CellGrid.tiles(32),
                CellGrid.tiles(33)));
        CellGrid small = new CellGrid(many, few, Optional.empty());
        long[] first = { 1 };
        long[] second = { 2 };
        small.tile(0, 0, first);
        small.tile(1, 0, second);
        CellGrid wider = new CellGrid(many, many, Optional.of(small));
        assertEquals(List.of(true, true), List.of(wider.tile(0, 0).orElseThrow() == first,
                wider.tile(1, 0).orElseThrow() == second));
        assertEquals(Optional.empty(), wider.tile(0, 1));
        CellGrid narrowAgain = new CellGrid(many, few, Optional.of(wider));
        assertTrue(narrowAgain.tile(1, 0).orElseThrow() == second);
        CellGrid same = new CellGrid(few, few, Optional.of(narrowAgain));
        assertTrue(same.tile(0, 0).orElseThrow() == first);
        assertEquals(Collections.emptyMap(), new CellGrid(Slots.none(), Slots.none(), Optional.empty()).verdictsIn());
    }

    @Test
    void aWordIsReadFromItsTileInEveryLineOfTiles() {
        Slots<String> many = slots(IntStream.range(0, 40).mapToObj(i -> "c" + i).toArray(String[]::new));
        CellGrid grid = new CellGrid(many, many, Optional.empty());
        for (int line = 0; line < 2; line++) {
            for (int column = 0; column < 2; column++) {
                long[] words = new long[CellGrid.SIDE * CellGrid.SIDE];
                Arrays.fill(words, 10 * line + column);
                grid.tile(line, column, words);
            }
        }
        for (int line = 0; line < 40; line++) {
            for (int column = 0; column < 40; column++) {
                assertEquals(10 * (many.slot(line) / CellGrid.SIDE) + many.slot(column) / CellGrid.SIDE,
                        grid.word(line, column));
            }
        }
    }
}
