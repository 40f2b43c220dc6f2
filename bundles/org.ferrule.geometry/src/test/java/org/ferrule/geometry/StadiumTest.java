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
import static org.quicktheories.generators.SourceDSL.longs;

import java.util.List;
import java.util.stream.IntStream;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quicktheories.core.Gen;

/** Oval shafts, alone and with a disc beside them. */
class StadiumTest {
    private static final Gen<Stadium> STADIA = DIAMETERS.zip(longs().between(0, 9_000_000),
            (height, more) -> new Stadium(height.plus(new Length(more)), height));

    @Test
    void aloneNeedsItsWidth() {
        Enclosure enclosure = new Stadium(mm("1.2"), mm("0.8")).enclosure();
        assertEquals(mm("1.2"), enclosure.upperDiameter());
        assertTrue(enclosure.isExact() && Discs.isInside(enclosure));
    }

    // s = 0.4: hides up to q = s/2 = 0.2; beyond q + h + s^2/(4q); a round shaft (s = 0) needs the sum.
    @ParameterizedTest
    @CsvSource({ "1.2, 0.8, 0.1, 1.2", "1.2, 0.8, 0.2, 1.2", "1.2, 0.8, 0.4, 1.3", "1.2, 0.8, 0, 1.2",
        "0.8, 0.8, 0.4, 1.2", "2, 1, 1, 2.25" })
    void needsRoomForDiscBesideItsFlat(String width, String height, String disc, String expected) {
        Enclosure enclosure = new Stadium(mm(width), mm(height)).with(mm(disc));
        assertEquals(mm(expected), enclosure.upperDiameter());
        assertTrue(enclosure.isExact());
    }

    @ParameterizedTest
    @CsvSource({ "0.8, 1.2", "1, 0", "1, -1" })
    void refusesWhatIsNotAnOval(String width, String height) {
        assertThrows(IllegalArgumentException.class, () -> new Stadium(mm(width), mm(height)));
    }

    @Test
    void refusesNegativeDisc() {
        assertThrows(IllegalArgumentException.class, () -> new Stadium(mm("1"), mm("1")).with(mm("-1")));
    }

    @Test
    void discLiesInsideAndBesideTheFlat() {
        laws().forAll(STADIA, DIAMETERS).check((stadium, disc) -> {
            Enclosure enclosure = stadium.with(disc);
            PlacedDisc end = enclosure.discs().get(0);
            PlacedDisc free = enclosure.discs().get(2);
            double rise = free.yMm() - end.yMm() - (stadium.height().mm() + disc.mm()) / 2;
            return Discs.isInside(enclosure) && Discs.isFree(enclosure, 2) && Math.abs(rise) < 1e-9;
        });
    }

    @Test
    void noOtherPlaceOfTheDiscNeedsLess() {
        Gen<Double> places = doubles().between(0.0, 1.0);
        laws().withExamples(300).forAll(STADIA, DIAMETERS, places).check((stadium, disc, place) -> {
            double half = stadium.width().minus(stadium.height()).mm() / 2;
            List<PlacedDisc> discs = List.of(new PlacedDisc(-half, 0, stadium.height()),
                    new PlacedDisc(half, 0, stadium.height()), beside(stadium, half, disc, place));
            return Discs.enclosingRadius(discs) >= stadium.with(disc).lowerDiameter().mm() / 2 - 1e-9;
        });
    }

    /** Lets a disc touch the stadium somewhere on the quarter from the middle of a flat (0) to the end (1). */
    private static PlacedDisc beside(Stadium stadium, double half, Length disc, double place) {
        double distance = stadium.height().plus(disc).mm() / 2;
        double way = place * (half + distance * Math.PI / 2);
        if (way <= half) {
            return new PlacedDisc(way, distance, disc);
        }
        double angle = (way - half) / distance;
        return new PlacedDisc(half + distance * Math.sin(angle), distance * Math.cos(angle), disc);
    }

    @Test
    void largerDiscNeverNeedsLess() {
        laws().forAll(STADIA, DIAMETERS, longs().between(1, 1_000_000)).check((stadium, disc, more) -> stadium
                .with(disc.plus(new Length(more))).upperDiameter().compareTo(stadium.with(disc).upperDiameter()) >= 0);
    }

    @Test
    void needsAsMuchAsManyDiscsInARow() {
        List<DiscSet.Disc> row = IntStream.rangeClosed(-20, 20)
                .mapToObj(i -> new DiscSet.Disc(mm("0.01").times(i), Length.ZERO, mm("0.8"))).toList();
        Length expected = new Stadium(mm("1.2"), mm("0.8")).with(mm("0.35")).upperDiameter();
        Enclosure discs = new DiscSet(row).with(mm("0.35"));
        Discs.assertNear(expected.mm(), discs.lowerDiameter(), 1e-4);
        assertTrue(discs.lowerDiameter().compareTo(expected) <= 0);
    }
}
