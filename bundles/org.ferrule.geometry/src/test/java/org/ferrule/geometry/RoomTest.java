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

/** Whether a circle has room, what is needed at least, and places taken over from another answer. */
class RoomTest {
    private static final Stadium OVAL = new Stadium(mm("1.2"), mm("0.8"));
    private static final List<Stadium> OVALS = List.of(OVAL, OVAL);

    private static List<Length> diameters(String... diameters) {
        return Stream.of(diameters).map(Discs::mm).toList();
    }

    private static List<FreeDisc> discs(String... diameters) {
        return diameters(diameters).stream().map(FreeDisc::new).toList();
    }

    @ParameterizedTest
    @CsvSource({ "2, FOUND", "1.999999, NONE" })
    void twoDiscsHaveRoomInTheirSumAndSizelessOnesAnywhere(String diameter, Room room) {
        assertEquals(room, EnclosingCircle.room(diameters("1", "0", "1", "0"), mm(diameter)));
        assertEquals(room, Packing.room(discs("1", "0", "1", "0"), mm(diameter)));
    }

    // 1 + sqrt 2, Graham 1968
    @ParameterizedTest
    @CsvSource({ "2.4143, FOUND", "2.4142, NONE" })
    void fourEqualDiscsHaveRoomFromTheProvedMultipleOn(String diameter, Room room) {
        assertEquals(room, EnclosingCircle.room(diameters("1", "1", "1", "1"), mm(diameter)));
        assertEquals(room, Packing.room(discs("1", "1", "1", "1"), mm(diameter)));
    }

    @ParameterizedTest
    @CsvSource({ "4, FOUND", "3.999999, NONE" })
    void twoWiresInTheHollowsBesideTwoShaftsNeedTheSumOfTheShafts(String diameter, Room room) {
        assertEquals(room, EnclosingCircle.room(diameters("1.3", "2", "1.2", "2"), mm(diameter)));
        assertEquals(mm("4"), EnclosingCircle.lower(diameters("1.3", "2", "1.2", "2")));
    }

    // Each holds a disc of 0.8; in a pile they need hypot(0.4, 0.8) + 0.8.
    @ParameterizedTest
    @CsvSource({ "1.694428, FOUND", "1.69, OPEN", "1.6, OPEN", "1.599999, NONE" })
    void ovalsHaveRoomInAPileAndNoneBelowWhatTheDiscsInThemNeed(String diameter, Room room) {
        assertEquals(room, Packing.room(OVALS, mm(diameter)));
    }

    // s = 1 and q = 1 apart: 1 + 1 + 1/4
    @ParameterizedTest
    @CsvSource({ "2.25, FOUND", "2.249999, NONE" })
    void oneOvalAndADiscAreAnsweredExactly(String diameter, Room room) {
        assertEquals(room, Packing.room(List.of(new Stadium(mm("2"), mm("1")), new FreeDisc(mm("1"))), mm(diameter)));
    }

    @Test
    void lowerBoundIsThatOfTheAnswer() {
        assertEquals(mm("1.6"), Packing.lowerDiameter(OVALS));
        assertEquals(mm("1.6"), Packing.of(OVALS).lowerDiameter());
        assertEquals(mm("1.2"), Packing.lowerDiameter(List.of(OVAL)));
        assertEquals(mm("2.25"),
                Packing.lowerDiameter(List.of(new FreeDisc(mm("1")), new Stadium(mm("2"), mm("1")))));
        assertEquals(mm("2"), Packing.lowerDiameter(discs("1", "0", "1")));
        Discs.assertNear(1 + Math.sqrt(2), Packing.lowerDiameter(discs("1", "1", "1", "1")), 1e-6);
        assertEquals(EnclosingCircle.discs(diameters("1", "1", "1")).lowerDiameter(),
                EnclosingCircle.lower(diameters("1", "1", "1")));
        assertEquals(mm("2"), EnclosingCircle.lower(diameters("1", "0.5", "1")), "the third one hides");
    }

    @Test
    void fourDiscsAreAllPlacedAndASizelessOneToo() {
        Enclosure four = EnclosingCircle.discs(diameters("1", "1", "1", "1"));
        Discs.assertNear(1 + Math.sqrt(2), four.upperDiameter(), 1e-6);
        assertTrue(four.gap().thirdNanometres() <= 3);
        Exactly.assertHolds(four, diameters("1", "1", "1", "1"));
        Exactly.assertCertified(four);
        Enclosure five = EnclosingCircle.discs(diameters("1", "0", "1", "1", "1"));
        assertEquals(four.upperDiameter(), five.upperDiameter());
        Exactly.assertHolds(five, diameters("1", "0", "1", "1", "1"));
    }

    /** Found by the best of twelve thousand descents; chance finds it in one of eighty. */
    @Test
    void searchGoesOnAsLongAsTheCircleIsNotProvedToBeTheLeast() {
        Enclosure ring = EnclosingCircle.discs(
                diameters("1.6423863", "1.4716767", "1.427973", "1.3157003", "1.2168943", "0.606988"));
        Discs.assertNear(3.819706106, ring.upperDiameter(), 1e-6);
    }

    @Test
    void ringOfFiveIsProvedToBeTheLeastButForRounding() {
        Enclosure ring = EnclosingCircle.discs(diameters("1.5", "1.45", "1.4", "1.35", "1.3"));
        assertTrue(ring.gap().thirdNanometres() <= 6, ring::toString);
        Exactly.assertCertified(ring);
    }

    private static List<Enclosure> warm(List<? extends Body> bodies, PlacedDisc... places) {
        List<Piece> pieces = bodies.stream().map(Piece::of).toList();
        return new WarmStart(pieces, List.of(List.of(places[0], places[1]), List.of(places[2], places[3])))
                .enclosures();
    }

    private static PlacedDisc at(double x, double y) {
        return new PlacedDisc(x, y, mm("0.8"));
    }

    /** The pile of ovals, far from the origin: as it lies, and settled. */
    @Test
    void placesTakenOverNeedTheCircleRoundThemWhereverTheyLie() {
        List<Enclosure> found = warm(OVALS, at(4.8, 2.6), at(5.2, 2.6), at(4.8, 3.4), at(5.2, 3.4));
        assertEquals(2, found.size());
        for (Enclosure enclosure : found) {
            Discs.assertNear(Math.hypot(0.4, 0.8) + 0.8, enclosure.upperDiameter(), 1e-6);
            Exactly.assertHolds(enclosure, diameters("0.8", "0.8", "0.8", "0.8"));
        }
    }

    @Test
    void placesWithRoomBetweenAreMovedTogether() {
        List<Enclosure> found = warm(OVALS, at(-0.2, -1), at(0.2, -1), at(-0.2, 1), at(0.2, 1));
        Discs.assertNear(Math.hypot(0.2, 1) * 2 + 0.8, found.get(0).upperDiameter(), 1e-6);
        Discs.assertNear(Math.hypot(0.4, 0.8) + 0.8, found.get(1).upperDiameter(), 1e-6);
    }

    @Test
    void placesThatOverlapAreOfUseOnlyWhenTheyAreMovedApart() {
        List<Enclosure> found = warm(OVALS, at(-0.2, -0.3), at(0.2, -0.3), at(-0.2, 0.3), at(0.2, 0.3));
        assertEquals(1, found.size());
        Discs.assertNear(Math.hypot(0.4, 0.8) + 0.8, found.get(0).upperDiameter(), 1e-6);
    }

    @Test
    void discsWithinATubeGoWithIt() {
        DiscSet tube = new DiscSet(List.of(disc("0.1", "0", "0.4"), disc("0", "0", "1"), disc("0.3", "0.2", "0.1")));
        Piece piece = Piece.of(tube);
        assertEquals(List.of(mm("1")), piece.diameters());
        List<PlacedDisc> whole = piece.whole(List.of(new PlacedDisc(5, 7, mm("1"))));
        assertEquals(diameters("0.4", "1", "0.1"), whole.stream().map(PlacedDisc::diameter).toList());
        assertEquals(List.of(5.1, 5.0, 5.3), whole.stream().map(d -> Math.rint(d.xMm() * 1e9) / 1e9).toList());
        assertEquals(List.of(7.0, 7.0, 7.2), whole.stream().map(d -> Math.rint(d.yMm() * 1e9) / 1e9).toList());
        assertEquals(whole.subList(1, 2), piece.placed(whole));
        Piece oval = Piece.of(OVAL);
        List<PlacedDisc> ends = List.of(at(0, 0), at(0.4, 0));
        assertEquals(ends, oval.whole(ends));
        assertEquals(ends, oval.placed(ends));
    }

    @Test
    void boundOfPiecesIsThatOfTheDiscsInThemOrOfOneBesideTheLargestDisc() {
        PiecesBound bound = new PiecesBound(OVALS.stream().map(Piece::of).toList());
        assertTrue(bound.excludes(mm("1.599999")) && !bound.excludes(mm("1.6")));
        assertEquals(mm("1.6"), bound.lower(mm("1.7")));
    }

    @Test
    void refusesMoreBodiesThanItCanSearchInEveryQuestion() {
        List<FreeDisc> many = Collections.nCopies(17, new FreeDisc(mm("1")));
        assertThrows(IllegalArgumentException.class, () -> Packing.room(many, mm("9")));
        assertThrows(IllegalArgumentException.class, () -> Packing.lowerDiameter(many));
    }
}
