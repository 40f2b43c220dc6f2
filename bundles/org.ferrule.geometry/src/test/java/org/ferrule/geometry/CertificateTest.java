/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The checks on which every answer of a search rests: never on the unsafe side. */
class CertificateTest {

    private static PlacedDisc at(double x, double y, String diameter) {
        return new PlacedDisc(x, y, mm(diameter));
    }

    /** Moves a body to where no coordinate is zero. */
    private static Outline away(Outline body) {
        return new Outline(body.discs().stream()
                .map(d -> new PlacedDisc(d.xMm() + 3.7, d.yMm() - 5.3, d.diameter())).toList(), body.bar());
    }

    private static Outline disc(double x, double y, String diameter) {
        return new Outline(List.of(at(x, y, diameter)), false);
    }

    private static Outline bar(double x, double y, double toX, double toY) {
        return new Outline(List.of(at(x, y, "0.4"), at(toX, toY, "0.4")), true);
    }

    // A hair of a billionth of a nanometre decides.
    @ParameterizedTest
    @CsvSource({ "1.000000000000004, true", "1, false", "0.99999999999999, false", "-1.000000000000004, true",
        "-0.9999999, false" })
    void discsAreClearIfMoreThanRoundingLiesBetween(double x, boolean clear) {
        assertEquals(clear, disc(x, 0, "1").isClearOf(disc(0, 0, "1")));
        assertEquals(clear, disc(0, x, "1.2").isClearOf(disc(0, 0, "0.8")));
    }

    @Test
    void discsAreClearInAnyDirection() {
        assertTrue(away(disc(0.61, 0.8, "1.1")).isClearOf(away(disc(0, 0, "0.9"))));
        assertFalse(away(disc(0.6, 0.79, "1.1")).isClearOf(away(disc(0, 0, "0.9"))));
    }

    // A bar from (0, 0) to (2, 0) of height 0.4 and a disc of diameter 0.6: 0.5 apart from its middle line.
    @ParameterizedTest
    @CsvSource({ "1, 0.5000001, true", "1, 0.4999999, false", "0.1, -0.5000001, true", "1.9, -0.4999999, false",
        "2.5000001, 0, true", "2.4999999, 0, false", "-0.5000001, 0, true", "-0.4999999, 0, false", "1, 0, false",
        "2.3, 0.41, true", "2.3, 0.39, false", "-0.3, 0.41, true", "-0.3, 0.39, false" })
    void discIsClearOfABar(double x, double y, boolean clear) {
        assertEquals(clear, disc(x, y, "0.6").isClearOf(bar(0, 0, 2, 0)));
        assertEquals(clear, bar(0, 0, 2, 0).isClearOf(disc(x, y, "0.6")));
        assertEquals(clear, bar(0, 0, 0, 2).isClearOf(disc(y, x, "0.6")));
        assertEquals(clear, away(bar(0, 0, 2, 0)).isClearOf(away(disc(x, y, "0.6"))));
        assertEquals(clear, away(bar(0, 0, 0, 2)).isClearOf(away(disc(y, x, "0.6"))));
    }

    @ParameterizedTest
    @CsvSource({ "0, 0.4000001, 2, 0.4000001, true", "0, 0.3999999, 2, 0.3999999, false", "1, -1, 1, 1, false",
        "1, 0.4000001, 1, 2, true", "1, 0.3999999, 1, 2, false", "5, -1, 5, 1, true", "-1, -1, 3, 1, false",
        "-1, 1, -1, -1, true", "1, 5, 1, 3, true" })
    void barIsClearOfABar(double x, double y, double toX, double toY, boolean clear) {
        assertEquals(clear, bar(0, 0, 2, 0).isClearOf(bar(x, y, toX, toY)));
        assertEquals(clear, bar(x, y, toX, toY).isClearOf(bar(0, 0, 2, 0)));
        assertEquals(clear, away(bar(y, x, toY, toX)).isClearOf(away(bar(0, 2, 0, 0))));
        assertEquals(clear, away(bar(toX, toY, x, y)).isClearOf(away(bar(0, 0, 2, 0))));
    }

    @Test
    void bodiesLieBetweenTheDiscsOfASetButNotOfABar() {
        Outline set = new Outline(List.of(at(0, 0, "0.4"), at(2, 0, "0.4")), false);
        assertTrue(set.isClearOf(disc(1, 0, "1")));
        assertTrue(set.isClearOf(bar(1, -1, 1, 1)));
        assertFalse(set.isClearOf(bar(1, 0, 3, 0)));
    }

    @Test
    void circleIsRoundedUp() {
        assertEquals(mm("1"), disc(0, 0, "1").around());
        assertEquals(new Length(3_000_000 + 3_000_001), disc(0.3, -0.4, "1").around());
        assertEquals(mm("2.4").plus(new Length(1)), bar(-1, 0, 0.5, 0).around());
    }

    @Test
    void touchingBodiesAreMovedApartByAHair() {
        Certificate certificate = Certificate.of(List.of(disc(-0.5, 0, "1"), disc(0.5, 0, "1"))).orElseThrow();
        assertEquals(mm("2").plus(new Length(1)), certificate.diameter());
        assertEquals(0.5, certificate.discs().get(1).xMm(), 1e-11);
        assertTrue(certificate.discs().get(1).xMm() > 0.5);
    }

    @Test
    void bodiesMoveAsAWhole() {
        Outline moved = bar(1, 2, 3, 2).moved(0.1);
        assertEquals(1.2, moved.discs().get(0).xMm(), 1e-12);
        assertEquals(2.2, moved.discs().get(0).yMm(), 1e-12);
        assertEquals(3.2, moved.discs().get(1).xMm(), 1e-12);
        assertTrue(moved.bar());
    }

    @Test
    void overlappingBodiesHaveNoCertificate() {
        assertFalse(Certificate.of(List.of(disc(-0.49, 0, "1"), disc(0.5, 0, "1"))).isPresent());
    }

    @Test
    void closedFormKeepsItsPlacesWhereRoundingLeavesNoRoom() {
        List<PlacedDisc> touching = List.of(at(-0.5, 0, "1"), at(0.5, 0, "1"));
        Enclosure exact = new Enclosure(mm("2"), mm("2"), touching);
        assertEquals(exact, Certificate.strengthen(exact));
        Enclosure wide = new Enclosure(mm("2"), mm("2.1"), touching);
        assertTrue(Certificate.strengthen(wide).discs().get(1).xMm() > 0.5);
        assertEquals(mm("2.1"), Certificate.strengthen(wide).upperDiameter());
        assertEquals(mm("2"), Certificate.strengthen(wide).lowerDiameter());
    }

    @Test
    void pointLiesWhereMostRoomIs() {
        Enclosure two = EnclosingCircle.discs(mm("1"), mm("1"));
        PlacedDisc point = PointAtRim.add(two).discs().get(2);
        assertEquals(0, point.xMm(), 1e-9);
        assertEquals(1, Math.abs(point.yMm()), 1e-9);
        assertTrue(point.reachMm() <= 1);
    }
}
