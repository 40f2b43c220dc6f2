/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.laws;
import static org.ferrule.geometry.Discs.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.quicktheories.generators.SourceDSL.lists;
import static org.quicktheories.generators.SourceDSL.longs;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lower bounds of circles round free discs: what they exclude is impossible, and rings they bound exactly. */
class DiscsBoundTest {

    // Rings in which each disc touches its neighbours: closed forms of reference table "Circle packing in a circle".
    @ParameterizedTest
    @CsvSource({ "1 1 1 1, 2.414213562", "1 1 1 1 1, 2.701301617", "1 1 1 1 1 1, 3", "1 1 1 1 1 1 1, 3" })
    void ringIsBoundedExactly(String discs, double diameter) {
        RingBound bound = new RingBound(falling(discs));
        assertTrue(bound.excludes(Length.ofMm(diameter - 1e-6)));
        assertFalse(bound.excludes(Length.ofMm(diameter + 1e-6)));
    }

    @Test
    void twoAndThreeAreBoundedExactly() {
        assertTrue(new RingBound(falling("2 1")).excludes(mm("2.999999")));
        assertFalse(new RingBound(falling("2 1")).excludes(mm("3")));
        // radii 2, 2, 3: 5.149545, Descartes/Soddy closed form
        assertTrue(new RingBound(falling("6 4 4")).excludes(mm("10.29908")));
        assertFalse(new RingBound(falling("6 4 4")).excludes(mm("10.2991")));
    }

    @Test
    void excludesNothingThatHoldsThemWhereverTheyLie() {
        laws().withExamples(300).forAll(lists().of(Discs.TRADE).ofSizeBetween(2, 8), longs().all())
                .check((discs, seed) -> {
                    List<Length> falling = discs.stream().sorted(Comparator.reverseOrder()).toList();
                    Length found = Length.ofMm(Jostling.diameter(falling, new Random(seed), 1)).plus(new Length(1));
                    DiscsBound bound = new DiscsBound(falling, Length.ZERO);
                    return !new RingBound(falling).excludes(found) && bound.lower(found).compareTo(found) <= 0
                            && bound.lower(found.times(2)).compareTo(found) <= 0;
                });
    }

    @Test
    void whatIsKnownBeforeCounts() {
        DiscsBound bound = new DiscsBound(falling("1 1"), mm("3"));
        assertEquals(mm("3"), bound.lower(mm("4")));
        assertTrue(bound.isLeast(mm("3")));
        assertFalse(bound.isLeast(mm("3.000001")));
    }

    @Test
    void equalDiscsCountAsManyAsAreNoSmaller() {
        assertEquals(mm("3"), EqualDiscs.lower(falling("2 1")).max(mm("3")));
        assertEquals(4.828427, EqualDiscs.lower(falling("2.5 2 2 2 0.1")).mm(), 1e-6);
        assertEquals(4.328428, EqualDiscs.lower(falling("1 1 1 1 1 1 1 1 1 1 1 1 1 1 1 1")).mm(), 1e-6);
    }

    @Test
    void manySmallDiscsNeedTheirArea() {
        List<Length> wires = java.util.Collections.nCopies(200, mm("0.1"));
        List<Length> discs = Stream.concat(Stream.of(mm("1")), wires.stream()).toList();
        assertEquals(Math.sqrt(3), new DiscsBound(discs, Length.ZERO).lower(mm("9")).mm(), 1e-6);
    }

    private static List<Length> falling(String discs) {
        return Stream.of(discs.split(" ")).map(Discs::mm).toList();
    }
}
