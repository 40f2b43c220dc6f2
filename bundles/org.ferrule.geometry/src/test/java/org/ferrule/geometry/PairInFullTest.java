/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ferrule.geometry.search.Arrangement;
import org.ferrule.geometry.search.Arrangement.Centre;
import org.ferrule.geometry.search.PackingSearch;
import org.ferrule.geometry.search.Shape;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** Two large discs across the circle, and others that hide beside them. */
class PairInFullTest {

    @Test
    void discsWithRoomToSpareNeedTheSum() {
        List<Length> discs = mm("3", "3", "1.9", "1.9");
        // turned by a quarter, and the small ones roughly in their hollows
        Optional<Enclosure> found = enclosure(discs, 0, new Centre(0, -1.5), new Centre(0, 1.5), new Centre(1.8, 0.1),
                new Centre(-1.8, 0.1));
        assertHolds(found, "6", discs);
    }

    // With radii a, a and 2a/3 the third just fits (Soddy), without room to spare.
    @Test
    void discsThatJustFitAreNotProved() {
        List<Length> discs = mm("3", "3", "2", "2");
        assertEquals(Optional.empty(), enclosure(discs, 40, new Centre(-1.5, 0), new Centre(1.5, 0),
                new Centre(0, 2), new Centre(0, -2)));
    }

    @Test
    void discsThatDoNotFitAreNotProved() {
        List<Length> discs = mm("3", "3", "2.1", "1");
        assertEquals(Optional.empty(), enclosure(discs, 40, new Centre(-1.5, 0), new Centre(1.5, 0),
                new Centre(0, 1.95), new Centre(0, -2)));
    }

    @Test
    void anotherPlaceIsSearchedForDiscsThatAreWedged() {
        List<Length> discs = mm("3", "3", "1.9", "1.9");
        List<Centre> both = List.of(new Centre(-1.5, 0), new Centre(1.5, 0), new Centre(0, 1.9), new Centre(0, 2));
        assertEquals(Optional.empty(), PackingSearch.fill(discs.stream().map(d -> Shape.disc(d.mm() / 2)).toList(),
                new Arrangement(both, 3), 2), "both in one hollow");
        assertHolds(enclosure(discs, 60, both.toArray(Centre[]::new)), "6", discs);
    }

    // One of three wires, beside the others in one hollow, was wedged where the search first found it.
    @Test
    void threeWiresInHollowsNeedTheSum() {
        Enclosure enclosure = EnclosingCircle.discs(mm("0.4921393", "0.8666667", "0.762713", "0.3556", "2.0020053"));
        assertEquals(Discs.mm("2.868672"), enclosure.upperDiameter());
        assertTrue(enclosure.isExact());
    }

    private static void assertHolds(Optional<Enclosure> found, String diameter, List<Length> discs) {
        Enclosure enclosure = found.orElseThrow();
        assertEquals(Discs.mm(diameter), enclosure.upperDiameter());
        assertTrue(enclosure.isExact());
        Exactly.assertHolds(enclosure, discs);
    }

    private static Optional<Enclosure> enclosure(List<Length> discs, int mostDescents, Centre... centres) {
        return new PairInFull(discs).enclosure(new Arrangement(List.of(centres), 3), mostDescents);
    }

    private static List<Length> mm(String... diameters) {
        return Stream.of(diameters).map(Discs::mm).toList();
    }
}
