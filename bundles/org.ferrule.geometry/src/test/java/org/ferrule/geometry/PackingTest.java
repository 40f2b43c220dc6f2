/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.disc;
import static org.ferrule.geometry.Discs.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bodies of all kinds side by side. */
class PackingTest {
    private static final DiscSet PAIR = new DiscSet(List.of(disc("0", "0", "1"), disc("1", "0", "1")));
    private static final DiscSet APART = new DiscSet(List.of(disc("5", "0", "1"), disc("7", "0", "1")));

    private static FreeDisc round(String diameter) {
        return new FreeDisc(mm(diameter));
    }

    private static Stadium oval(String width, String height) {
        return new Stadium(mm(width), mm(height));
    }

    @Test
    void nothingNeedsNoRoom() {
        assertEquals(EnclosingCircle.discs(), Packing.of(List.of()));
    }

    @Test
    void discsAloneNeedWhatFreeDiscsNeed() {
        List<Length> diameters = List.of(mm("0.4"), mm("1.2"), mm("0.9"), mm("1"), Length.ZERO);
        Enclosure packed = Packing.of(diameters.stream().map(FreeDisc::new).toList());
        Enclosure expected = EnclosingCircle.discs(diameters);
        assertEquals(expected.upperDiameter(), packed.upperDiameter());
        assertEquals(expected.lowerDiameter(), packed.lowerDiameter());
        Exactly.assertHolds(packed, diameters);
        Exactly.assertCertified(packed);
    }

    @Test
    void oneRigidBodyHasAnAnswerOfItsOwn() {
        assertEquals(PAIR.enclosure(), Packing.of(List.of(PAIR)));
        assertEquals(oval("2", "1").with(mm("1")).upperDiameter(),
                Packing.of(List.of(oval("2", "1"), round("1"))).upperDiameter());
        Enclosure reversed = Packing.of(List.of(round("0.7"), PAIR));
        assertEquals(PAIR.with(mm("0.7")).upperDiameter(), reversed.upperDiameter());
        Exactly.assertHolds(reversed, List.of(mm("0.7"), mm("1"), mm("1")));
    }

    @Test
    void twoOvalsAndTwoDiscsNeedNoMoreThanBesideAThird() {
        List<Body> three = List.of(new Stadium(new Length(3_922_446), new Length(1_224_599)),
                new Stadium(new Length(4_417_427), new Length(1_482_801)), round("0.618373"),
                new FreeDisc(new Length(2_600_000)), round("0.3556"));
        Length least = Packing.of(three).upperDiameter();
        assertTrue(Packing.of(three.subList(0, 4)).upperDiameter().compareTo(least) <= 0, least::toString);
    }

    // Two stadia 2 x 1 lie like four discs; those of 1.2 x 0.8 in a pile: hypot(0.4, 0.8) + 0.8.
    @ParameterizedTest
    @CsvSource({ "2, 1, 2.414214", "1.2, 0.8, 1.694427", "0.9, 0.2, 0.928011" })
    void twoOvalsLieFlatOnEachOther(String width, String height, double expected) {
        assertNeeds(expected, List.of(oval(width, height), oval(width, height)));
    }

    @Test
    void fourFlatRodsMakeAPile() {
        // hypot(0.7, 0.6) + 0.2
        assertNeeds(1.121954, Collections.nCopies(4, oval("0.9", "0.2")));
    }

    @Test
    void thinBladesLieOnEachOther() {
        // hypot(2.38, 0.02) + 0.02; a thin wire hides beside the flats
        assertNeeds(2.400084, List.of(oval("2.4", "0.02"), oval("2.4", "0.02")));
        assertNeeds(2.400084, List.of(oval("2.4", "0.02"), round("0.1"), oval("2.4", "0.02")));
    }

    @Test
    void wiresHideBesideTheFlatsOfAnOval() {
        Enclosure enclosure = Packing.of(List.of(round("0.5"), oval("2", "1"), round("0.5")));
        assertEquals(mm("2"), enclosure.lowerDiameter());
        assertTrue(enclosure.gap().thirdNanometres() <= 2);
    }

    @Test
    void wiresTooThickToHideLiftEachOther() {
        Enclosure enclosure = Packing.of(List.of(oval("2", "1"), round("0.6"), round("0.6")));
        assertTrue(enclosure.upperDiameter().compareTo(oval("2", "1").with(mm("0.6")).upperDiameter()) > 0);
        Exactly.assertHolds(enclosure, List.of(mm("1"), mm("1"), mm("0.6"), mm("0.6")));
    }

    // Rigid pairs of touching discs can lie as the best four and six free discs do: 1 + sqrt 2 and 3.
    @ParameterizedTest
    @CsvSource({ "2, 2.414214", "3, 3" })
    void rigidPairsNeedWhatFreeDiscsNeed(int count, double expected) {
        assertNeeds(expected, Collections.nCopies(count, PAIR));
    }

    @Test
    void otherBodiesLieBetweenTheDiscsOfASet() {
        assertNeeds(3, List.of(APART, round("1"), round("0.3")));
        assertNeeds(3, List.of(APART, oval("1.5", "0.9")));
    }

    @Test
    void bodiesWhoseOutlineIsADiscAreDiscs() {
        DiscSet tube = new DiscSet(List.of(disc("0.1", "0", "0.4"), disc("0", "0", "1"), disc("0.3", "0.3", "0.1")));
        Enclosure enclosure = Packing.of(List.of(oval("1", "1"), tube, round("1")));
        Enclosure three = EnclosingCircle.discs(mm("1"), mm("1"), mm("1"));
        assertEquals(three.upperDiameter(), enclosure.upperDiameter());
        assertEquals(three.lowerDiameter(), enclosure.lowerDiameter());
        Exactly.assertHolds(enclosure, List.of(mm("1"), mm("1"), mm("0.4"), mm("1"), mm("0.1"), mm("1")));
        List<PlacedDisc> discs = enclosure.discs();
        assertEquals(discs.get(0), discs.get(1));
        assertEquals(0.1, Math.hypot(discs.get(2).xMm() - discs.get(3).xMm(), discs.get(2).yMm() - discs.get(3).yMm()),
                1e-12);
    }

    @Test
    void sizelessBodiesNeedNothing() {
        DiscSet point = new DiscSet(List.of(disc("3", "0", "0"), disc("3", "0", "0")));
        List<Body> bodies = List.of(point, oval("2", "1"), round("0"), round("0.6"), round("0.6"));
        Enclosure enclosure = Packing.of(bodies);
        Enclosure expected = Packing.of(List.of(oval("2", "1"), round("0.6"), round("0.6")));
        assertEquals(expected.upperDiameter(), enclosure.upperDiameter());
        Exactly.assertHolds(enclosure,
                Stream.of("0", "0", "1", "1", "0", "0.6", "0.6").map(Discs::mm).toList());
    }

    @Test
    void warmStartIsNeverWorse() {
        List<Body> large = List.of(oval("1.9", "1"), PAIR, round("0.62"), round("0.4"));
        List<Body> small = List.of(oval("1.8", "1"), PAIR, round("0.6"), round("0.35"));
        Enclosure warm = Packing.of(large);
        Enclosure enclosure = Packing.of(small, warm);
        assertTrue(enclosure.upperDiameter().compareTo(warm.upperDiameter()) <= 0);
        assertTrue(enclosure.upperDiameter().compareTo(Packing.of(small).upperDiameter()) <= 0);
        Exactly.assertHolds(enclosure, Stream.of("1", "1", "1", "1", "0.6", "0.35").map(Discs::mm).toList());
    }

    @Test
    void warmStartOfOneBodyIsHarmless() {
        assertEquals(PAIR.enclosure().upperDiameter(),
                Packing.of(List.of(PAIR), PAIR.enclosure()).upperDiameter());
    }

    @Test
    void warmStartThatOverlapsIsOfNoUse() {
        List<Body> bodies = List.of(oval("1.9", "1"), round("0.9"), round("0.8"));
        Enclosure heap = new Enclosure(mm("1"), mm("1"), Collections.nCopies(4, new PlacedDisc(0, 0, mm("1"))));
        Enclosure enclosure = Packing.of(bodies, heap);
        assertTrue(enclosure.upperDiameter().compareTo(Packing.of(bodies).upperDiameter()) <= 0);
        Exactly.assertApart(enclosure, enclosure.discs().get(2), enclosure.discs().get(3));
    }

    @Test
    void refusesWhatItCannotAnswer() {
        List<FreeDisc> many = Collections.nCopies(17, round("1"));
        assertEquals("17 bodies, at most 16",
                assertThrows(IllegalArgumentException.class, () -> Packing.of(many)).getMessage());
        Enclosure warm = EnclosingCircle.discs(mm("1"));
        List<Body> bodies = List.of(oval("2", "1"), round("1"));
        assertEquals("places of 1 discs for 3",
                assertThrows(IllegalArgumentException.class, () -> Packing.of(bodies, warm)).getMessage());
        assertThrows(IllegalArgumentException.class, () -> round("-1"));
    }

    private static void assertNeeds(double expectedMm, List<? extends Body> bodies) {
        Enclosure enclosure = Packing.of(bodies);
        Discs.assertNear(expectedMm, enclosure.upperDiameter(), 1e-6);
        assertTrue(enclosure.lowerDiameter().mm() <= expectedMm + 1e-6);
    }
}
