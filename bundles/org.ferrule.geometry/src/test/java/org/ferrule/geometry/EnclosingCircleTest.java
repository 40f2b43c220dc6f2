/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.DIAMETERS;
import static org.ferrule.geometry.Discs.laws;
import static org.ferrule.geometry.Discs.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.quicktheories.generators.SourceDSL.doubles;
import static org.quicktheories.generators.SourceDSL.lists;
import static org.quicktheories.generators.SourceDSL.longs;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quicktheories.core.Gen;

/** Circles round up to three free discs. */
class EnclosingCircleTest {
    private static final Gen<List<Length>> FEW = lists().of(DIAMETERS).ofSizeBetween(1, 3);
    private static final Gen<List<Length>> THREE = lists().of(DIAMETERS).ofSize(3);

    @Test
    void nothingNeedsNoRoom() {
        Enclosure enclosure = EnclosingCircle.discs();
        assertEquals(Length.ZERO, enclosure.upperDiameter());
        assertTrue(enclosure.discs().isEmpty());
    }

    @Test
    void shaftAndWireInDifferentUnitsAddUpExactly() {
        Length shaft = Length.of("2.6", LengthUnit.FRENCH);
        Length wire = Length.of("0.014", LengthUnit.INCH);
        Enclosure enclosure = EnclosingCircle.discs(shaft, wire);
        assertTrue(enclosure.isExact());
        assertEquals(new Length(2_600_000 + 1_066_800), enclosure.upperDiameter());
    }

    @ParameterizedTest
    @CsvSource({ "1, 1, 0.666666, 2", "1.5, 0.9, 0.7, 2.4", "2, 0, 0, 2", "0, 0, 0, 0", "1, 1, 0, 2" })
    void smallDiscHidesBesideTwo(String a, String b, String c, String expected) {
        Enclosure enclosure = EnclosingCircle.discs(mm(a), mm(b), mm(c));
        assertTrue(enclosure.isExact());
        assertEquals(mm(expected), enclosure.upperDiameter());
        assertTrue(Discs.isInside(enclosure));
    }

    @Test
    void refusesMoreDiscsThanItCanSearch() {
        List<Length> many = Collections.nCopies(17, mm("1"));
        String message = assertThrows(IllegalArgumentException.class, () -> EnclosingCircle.discs(many)).getMessage();
        assertEquals("17 discs, at most 16", message);
    }

    @Test
    void refusesNegativeDiameter() {
        String message = assertThrows(IllegalArgumentException.class,
                () -> EnclosingCircle.discs(mm("1"), mm("-0.2"))).getMessage();
        assertEquals("negative diameter: -0.2 mm", message);
    }

    @Test
    void boundsAreAtMostOneRoundingApart() {
        laws().forAll(FEW).check(discs -> EnclosingCircle.discs(discs).gap().thirdNanometres() <= 1);
    }

    @Test
    void discsLieInsideAndDoNotOverlap() {
        laws().forAll(FEW).check(diameters -> {
            Enclosure enclosure = EnclosingCircle.discs(diameters);
            return Discs.isInside(enclosure) && Discs.isFree(enclosure, diameters.size() - 1)
                    && (diameters.size() < 3 || Discs.isFree(enclosure, 1))
                    && enclosure.discs().stream().map(PlacedDisc::diameter).toList().equals(diameters);
        });
    }

    @Test
    void largerDiscNeverNeedsLess() {
        laws().forAll(FEW, longs().between(1, 1_000_000)).check((diameters, more) -> {
            List<Length> larger = new ArrayList<>(diameters);
            larger.set(0, larger.get(0).plus(new Length(more)));
            return isNotLess(EnclosingCircle.discs(larger), EnclosingCircle.discs(diameters));
        });
    }

    @Test
    void oneDiscMoreNeverNeedsLess() {
        laws().forAll(THREE).check(three -> isNotLess(EnclosingCircle.discs(three),
                EnclosingCircle.discs(three.subList(0, 2))));
    }

    private static boolean isNotLess(Enclosure one, Enclosure other) {
        return one.upperDiameter().compareTo(other.upperDiameter()) >= 0
                && one.lowerDiameter().compareTo(other.lowerDiameter()) >= 0;
    }

    @Test
    void orderOfDiscsDoesNotMatter() {
        laws().forAll(FEW, longs().all()).check((diameters, seed) -> {
            List<Length> shuffled = new ArrayList<>(diameters);
            Collections.shuffle(shuffled, new Random(seed));
            Enclosure one = EnclosingCircle.discs(diameters);
            Enclosure other = EnclosingCircle.discs(shuffled);
            return one.upperDiameter().equals(other.upperDiameter())
                    && one.lowerDiameter().equals(other.lowerDiameter());
        });
    }

    @Test
    void noOtherArrangementOfThreeNeedsLess() {
        Gen<Double> angles = doubles().between(0.0, 2 * Math.PI);
        laws().withExamples(300).forAll(THREE, angles).check((diameters, angle) -> {
            List<PlacedDisc> anyhow = List.of(new PlacedDisc(0, 0, diameters.get(0)),
                    touching(diameters.get(0), diameters.get(1), 0),
                    touching(diameters.get(0), diameters.get(2), angle));
            double lower = EnclosingCircle.discs(diameters).lowerDiameter().mm() / 2;
            return anyhow.get(1).gapMm(anyhow.get(2)) < 0 || Discs.enclosingRadius(anyhow) >= lower - 1e-9;
        });
    }

    private static PlacedDisc touching(Length middle, Length disc, double angle) {
        double distance = (middle.mm() + disc.mm()) / 2;
        return new PlacedDisc(distance * Math.cos(angle), distance * Math.sin(angle), disc);
    }

    /** Dust of a tenth of a micrometre beside a shaft: nothing of the trade, but the shaft's size must not blur where it lies. */
    @Test
    void smallestDiscsBesideALargeOneLieWhereTheyFit() {
        List<Length> diameters = List.of(new Length(412), new Length(403), new Length(405), new Length(19_405_771));
        Enclosure enclosure = EnclosingCircle.discs(diameters);
        Exactly.assertHolds(enclosure, diameters);
        Exactly.assertCertified(enclosure);
    }
}
