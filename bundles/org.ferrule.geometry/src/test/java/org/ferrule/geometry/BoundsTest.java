/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.disc;
import static org.ferrule.geometry.Discs.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The small steps that proved bounds are made of. */
class BoundsTest {

    @ParameterizedTest
    @CsvSource({ "1, 16, 1, 5, 5", "1, 17, 1, 5, 6", "1, 15, 1, 4, 5", "1, 16, 2, 2, 3", "-9, 16, 2, -3, -2",
        "0, 16, 2, 2, 2", "0, 0, 1, 0, 0" })
    void rootIsEnclosedAndExactWhereItIsWhole(long summand, long radicand, long denominator, long lower, long upper) {
        assertEquals(new Bounds(new Length(lower), new Length(upper)), Bounds.ofRoot(BigInteger.valueOf(summand),
                BigInteger.valueOf(radicand), BigInteger.valueOf(denominator)));
    }

    @ParameterizedTest
    @CsvSource({ "7, 2, 3, 4", "-7, 2, -4, -3", "8, 2, 4, 4", "1, 3, 0, 1" })
    void quotientIsEnclosed(long numerator, long denominator, long lower, long upper) {
        assertEquals(new Bounds(new Length(lower), new Length(upper)),
                Bounds.ofQuotient(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator)));
    }

    /** What doubles have worked out may be off by their last digits, so a whole number proves nothing of itself. */
    @ParameterizedTest
    @CsvSource({ "10, 9, 11", "10.5, 10, 11", "0, 0, 0" })
    void whatDoublesHaveWorkedOutIsWidened(double computed, long down, long up) {
        assertEquals(new Length(down), Bounds.down(computed));
        assertEquals(new Length(up), Bounds.up(computed));
    }

    @ParameterizedTest
    @CsvSource({ "1, -3, 2, '1.0 2.0'", "1, 3, 2, '-2.0 -1.0'", "1, 0, 1, ''", "1, 2, 1, '-1.0 -1.0'",
        "0, 2, -4, '2.0'", "0, -2, 4, '2.0'", "0, 0, 1, ''", "1, 0, 0, '0.0'", "2, 0, -8, '-2.0 2.0'" })
    void quadraticHasItsRealRoots(double a, double b, double c, String roots) {
        double[] found = Arrays.stream(Quadratic.roots(a, b, c)).map(root -> root + 0.0).sorted().toArray();
        assertEquals(roots, String.join(" ", Arrays.stream(found).mapToObj(Double::toString).toList()));
    }

    @ParameterizedTest
    @CsvSource({ "2.2, FOUND", "2.1, FOUND", "2.0999, OPEN", "2, OPEN", "1.9999, NONE" })
    void thereIsRoomFromTheUpperBoundOnAndNoneBelowTheLowerOne(String diameter, Room room) {
        assertEquals(room, Room.of(new Enclosure(mm("2"), mm("2.1"), List.of()), mm(diameter)));
    }

    @Test
    void answerIsExactWhereBothBoundsMeet() {
        assertTrue(new Enclosure(mm("2"), mm("2"), List.of()).isExact());
        Enclosure open = new Enclosure(mm("2"), mm("2.1"), List.of());
        assertFalse(open.isExact());
        assertEquals(mm("0.1"), open.gap());
        assertThrows(IllegalArgumentException.class, () -> new Enclosure(mm("2.1"), mm("2"), List.of()));
    }

    @Test
    void placedDiscTellsItsReachAndItsGap() {
        PlacedDisc one = new PlacedDisc(3, -4, mm("2"));
        assertEquals(6, one.reachMm(), 1e-12);
        assertEquals(5 - 1.5, one.gapMm(new PlacedDisc(0, 0, mm("1"))), 1e-12);
        assertEquals(13 - 1.5, one.gapMm(new PlacedDisc(-9, 1, mm("1"))), 1e-12);
    }

    @Test
    void onlyBalancedDiscsProveABound() {
        Rim proved = new Rim(0, 0, 5, new int[] { 2, 4 }, new double[] { 0.25, 0.75 });
        assertEquals(5, proved.lower());
        assertEquals(List.of(0.0, 0.25, 0.0, 0.75), List.of(proved.weight(1), proved.weight(2), proved.weight(3),
                proved.weight(4)));
        Rim unproved = new Rim(0, 0, 5, new int[] { 2, 4, 5 }, new double[0]);
        assertEquals(Double.NEGATIVE_INFINITY, unproved.lower());
        assertEquals(0, unproved.weight(2));
    }

    private static FixedDiscs fixed(double... placesAndRadii) {
        FixedDiscs discs = new FixedDiscs(placesAndRadii.length / 3);
        for (int i = 0; i < discs.size(); i++) {
            discs.set(i, placesAndRadii[3 * i], placesAndRadii[3 * i + 1], placesAndRadii[3 * i + 2]);
        }
        return discs;
    }

    /** Centres 13 apart, so the circle is (13 + 3 + 5)/2 in radius and its centre lies 7.5 from the first one. */
    @Test
    void circleRoundTwoDiscsLiesAlongTheLineOfTheirCentres() {
        RimSearch.Result found = RimSearch.search(fixed(1, 2, 3, 13, 7, 5));
        assertEquals(10.5, found.reach(), 1e-12);
        assertEquals(10.5, found.bound().lower(), 1e-12);
        assertEquals(1 + 12 * 7.5 / 13, found.best().x(), 1e-12);
        assertEquals(2 + 5 * 7.5 / 13, found.best().y(), 1e-12);
        assertEquals(0.5, found.bound().weight(0) * found.bound().weight(1) * 2, 1e-12);
    }

    @Test
    void discWithinAnotherDoesNotCount() {
        RimSearch.Result found = RimSearch.search(fixed(1, 2, 9, 2, 2, 5));
        assertEquals(9, found.reach(), 1e-12);
        assertEquals(List.of(1.0, 2.0), List.of(found.best().x(), found.best().y()));
        assertEquals(9, RimSearch.search(fixed(2, 2, 5, 1, 2, 9)).bound().lower(), 1e-12);
    }

    /** Three equal discs in touch: 1 + 2/sqrt 3 times their radius (Descartes); three of 3, 4, 5 by calculation. */
    @Test
    void circleRoundThreeDiscsTouchesAllOfThem() {
        RimSearch.Result equal = RimSearch.search(fixed(0, 0, 1, 2, 0, 1, 1, Math.sqrt(3), 1));
        assertEquals(1 + 2 / Math.sqrt(3), equal.bound().lower(), 1e-12);
        assertEquals(1 / 3.0, equal.bound().weight(2), 1e-12);
        FixedDiscs unequal = fixed(10, -4, 3, -6, -2, 4, 1, 12, 5);
        RimSearch.Result found = RimSearch.search(unequal);
        for (int i = 0; i < 3; i++) {
            assertEquals(found.reach(), unequal.reach(i, found.best().x(), found.best().y()), 1e-9);
            assertTrue(found.bound().weight(i) > 0);
        }
        assertEquals(found.reach(), found.bound().lower(), 1e-9);
        assertEquals(1, found.bound().weight(0) + found.bound().weight(1) + found.bound().weight(2), 1e-12);
    }

    @Test
    void wireBesideASingleTubeIsKnownAtOnce() {
        FreeDiscSearch.Result found = FreeDiscSearch.search(fixed(0, 0, 3_000_000), 1_000_000);
        assertTrue(found.lower() <= 4_000_000 && found.lower() > 3_999_998, () -> "proved: " + found.lower());
        assertEquals(4_000_000, found.rim().reach(), 3);
        assertTrue(found.places() < 20, () -> found.places() + " places");
    }

    /** Round three equal discs of which two are rigid: 1 + 2/sqrt 3 (Descartes). */
    @Test
    void wireBesideATouchingPairLiesInItsPocket() {
        DiscSet pair = new DiscSet(List.of(disc("4", "0", "1"), disc("5", "0", "1")));
        Enclosure enclosure = pair.with(mm("1"));
        Discs.assertNear(1 + 2 / Math.sqrt(3), enclosure.upperDiameter(), 2e-6);
        assertTrue(enclosure.gap().thirdNanometres() <= 6);
        assertTrue(Discs.isInside(enclosure) && Discs.isFree(enclosure, 2));
        assertEquals(List.of(mm("1"), mm("1"), mm("1")),
                enclosure.discs().stream().map(PlacedDisc::diameter).toList());
    }

    @Test
    void wireThatFindsRoomBetweenNeedsNothingMore() {
        DiscSet apart = new DiscSet(List.of(disc("4", "1", "1"), disc("6", "1", "1")));
        assertEquals(mm("3"), apart.with(mm("1")).upperDiameter());
        assertTrue(apart.with(mm("1")).isExact());
        assertEquals(mm("3"), apart.enclosure().upperDiameter());
        assertTrue(apart.with(mm("1.01")).lowerDiameter().compareTo(mm("3")) >= 0);
        assertTrue(apart.with(mm("1.6")).upperDiameter().compareTo(mm("3")) > 0);
        assertThrows(IllegalArgumentException.class, () -> apart.with(mm("-1")));
    }

    @Test
    void setOfThreeThatHoldEachOtherApartIsBoundedWithinAFewThirdsOfANanometre() {
        Enclosure enclosure = new DiscSet(
                List.of(disc("7", "0", "1"), disc("9", "0", "1"), disc("8", "2", "1"))).enclosure();
        // Centres (-1, 0), (1, 0), (0, 2) lie on a circle of radius 1.25.
        Discs.assertNear(3.5, enclosure.upperDiameter(), 1e-6);
        assertTrue(enclosure.gap().thirdNanometres() <= 3 && Discs.isInside(enclosure));
    }

    /** Between the outer two lie (1.2, 1.6) mm, so 2 mm and their radii; neither is the first of the set. */
    @Test
    void twoDiscsThatDetermineTheCircleNeedTheirDistanceAndTheirHalvesWherever() {
        Enclosure enclosure = new DiscSet(
                List.of(disc("5", "5", "0.5"), disc("4.4", "4.2", "0.5"), disc("5.6", "5.8", "0.5"))).enclosure();
        assertTrue(enclosure.isExact());
        assertEquals(mm("2.5"), enclosure.upperDiameter());
    }

    /**
     * A tube of 3 mm between two wires of 1 mm, 4 mm from its middle; a disc of 8 mm lies best upon the tube, 5.5 mm above:
     * the circle about (0, c) touches it and both wires where 9.5 - c = hypot(4, c) + 0.5, so c = 65/18.
     */
    @Test
    void discFindsThePlaceAlongATubeThatIsInNoPocket() {
        DiscSet tube = new DiscSet(List.of(disc("0", "0", "3"), disc("4", "0", "1"), disc("-4", "0", "1")));
        Enclosure enclosure = tube.with(mm("8"));
        Discs.assertNear(19 - 65 / 9.0, enclosure.upperDiameter(), 2e-6);
        assertTrue(enclosure.gap().thirdNanometres() <= 6);
        assertTrue(Discs.isInside(enclosure) && Discs.isFree(enclosure, 3));
    }
}
