/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

import org.ferrule.fit.figure.Figure;
import org.ferrule.geometry.Body;
import org.ferrule.geometry.FreeDisc;
import org.junit.jupiter.api.Test;

/** What parts side by side need, with and without a search, and whether it is proved. */
class NeedTest {
    private final Packings packings = new Packings();

    private static Profile disc(String low, String centre, String high, boolean assumed) {
        return Profile.disc(new Figure(length(low), length(centre), length(high), assumed));
    }

    private static List<Body> bodies(String... diameters) {
        return Stream.of(diameters).<Body>map(d -> new FreeDisc(length(d))).toList();
    }

    @Test
    void everyLaneIsTheSumOfTwo() {
        List<Profile> two = List.of(disc("0.9 mm", "1 mm", "1.1 mm", false), disc("0.4 mm", "0.5 mm", "0.7 mm", true));
        Need need = Need.of(two, two, packings);
        assertEquals(new Figure(length("1.3 mm"), length("1.5 mm"), length("1.8 mm"), true), need.figure());
        assertTrue(need.proved());
        assertEquals(length("1.8 mm"), Need.high(two, packings));
    }

    @Test
    void aTaperTakenAsAWholeProvesNothing() {
        List<Profile> wide = List.of(disc("0.9 mm", "1 mm", "1.1 mm", false));
        assertFalse(Need.of(wide, List.of(disc("0.8 mm", "0.9 mm", "1 mm", false)), packings).proved());
    }

    /** Nine discs of 1 mm need 3.613 mm (Graham et al., 1998); so many are not searched. */
    @Test
    void moreThanCanBeSearchedProveNothing() {
        List<Profile> nine = Collections.nCopies(9, disc("1 mm", "1 mm", "1 mm", false));
        Need need = Need.of(nine, nine, packings);
        assertFalse(need.proved());
        assertTrue(need.figure().centre().mm() >= 3.613 && need.figure().low().mm() <= 3.614, need.toString());
    }

    @Test
    void anAssumedCentreCountsWithItsLowerEnd() {
        List<Profile> stated = Collections.nCopies(2, disc("0.9 mm", "1 mm", "1.1 mm", false));
        List<Profile> assumed = Collections.nCopies(2, disc("0.9 mm", "1 mm", "1.1 mm", true));
        assertTrue(Need.overlap(stated, length("1.9 mm"), packings));
        assertFalse(Need.overlap(assumed, length("1.9 mm"), packings));
        assertTrue(Need.overlap(assumed, length("1.79 mm"), packings));
        assertTrue(Need.mayOverlap(stated, length("1.9 mm"), packings));
        assertFalse(Need.mayOverlap(assumed, length("1.9 mm"), packings));
        assertTrue(Need.mayExceed(assumed, length("2.19 mm"), packings));
        assertFalse(Need.mayExceed(assumed, length("2.2 mm"), packings));
    }

    @Test
    void whatIsEnoughIsToldWithoutASearchHoweverTheBodiesStand() {
        assertEquals(length("2 mm"), SideBySide.enough(bodies("1 mm", "0.1 mm", "1 mm", "0.1 mm")));
        assertEquals(1 + 2 / Math.sqrt(3), SideBySide.enough(bodies("1 mm", "1 mm", "1 mm")).mm(), 1e-6);
        assertEquals(1 + 2 / Math.sqrt(3), SideBySide.needed(bodies("1 mm", "0.4 mm", "1 mm", "1 mm")).mm(), 1e-6);
    }

    /** Eight discs need 1 + 1/sin(180°/7) (Graham et al., 1998). */
    @Test
    void eightAreStillPlaced() {
        assertEquals(8, SideBySide.enclosure(Collections.nCopies(8, new FreeDisc(length("1 mm")))).discs().size());
        assertEquals(3.30476, SideBySide.enclosure(Collections.nCopies(8, new FreeDisc(length("1 mm"))))
                .upperDiameter().mm(), 1e-5);
    }
}
