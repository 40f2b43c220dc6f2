/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import static org.ferrule.flow.Sections.LUMEN;
import static org.ferrule.flow.Sections.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is left over all positions. */
class IntervalTest {

    private static OpenFraction interval(String... devices) {
        return LumenFlow.interval(LUMEN, Stream.of(devices).map(Sections::mm).toList());
    }

    @Test
    void emptyLumenLetsAllThrough() {
        assertEquals(new OpenFraction(1, 1, true), interval());
        assertEquals(new OpenFraction(1, 1, true), interval("0", "0"));
    }

    @ParameterizedTest
    @ValueSource(strings = { "0.2", "0.8", "1.9" })
    void oneDeviceReachesFromTheCentreToTheWall(String device) {
        OpenFraction fraction = interval(device, "0");
        double k = mm(device).mm() / 2;
        assertTrue(fraction.exact());
        assertTrue(fraction.low() <= Annulus.concentric(k) && fraction.high() >= Annulus.eccentric(k, 1));
        assertEquals(Annulus.concentric(k), fraction.low(), 1e-8);
        assertEquals(Annulus.eccentric(k, 1), fraction.high(), 1e-8);
    }

    @Test
    void plugLetsNothingThrough() {
        assertEquals(new OpenFraction(0, 0, true), interval("2"));
        OpenFraction almost = interval("1.9999", "0.0001");
        assertEquals(0, almost.low());
        assertEquals(Annulus.eccentric(0.99995, 1), almost.high(), 1e-18);
    }

    /** Equal shafts hinder most side by side about the centre, and least on the wall, touching each other. */
    @ParameterizedTest
    @CsvSource({ "0.8", "0.95" })
    void twoShaftsLieInTheCentreOrOnTheWall(String shaft) {
        OpenFraction fraction = interval(shaft, shaft);
        double r = mm(shaft).mm() / 2;
        double depth = Math.sqrt(Math.pow(1 - r, 2) - r * r);
        assertFound(List.of(Sections.circle(r, 0, r), Sections.circle(-r, 0, r)), fraction.low(), 0.995);
        assertFound(List.of(Sections.circle(r, depth, r), Sections.circle(-r, depth, r)), fraction.high(), 1.005);
        assertFalse(fraction.exact());
    }

    private static void assertFound(List<Circle> expected, double end, double margin) {
        assertEquals(1, end / margin / LumenFlow.at(LUMEN, Sections.placed(expected)), 1e-4);
    }

    /** Two devices that fill the lumen can lie in one way only. */
    @Test
    void noRoomLeavesNoChoice() {
        OpenFraction fraction = interval("1.2", "0.8");
        double only = LumenFlow.at(LUMEN, EnclosingCircle.discs(mm("1.2"), mm("0.8")).discs());
        assertEquals(0.995, fraction.low() / only, 1e-9);
        assertEquals(1.005, fraction.high() / only, 1e-9);
    }

    @Test
    void threeThatFillTheLumenAreFoundToFit() {
        Length shaft = mm("0.9");
        Length lumen = EnclosingCircle.discs(shaft, shaft, shaft).upperDiameter();
        OpenFraction fraction = LumenFlow.interval(lumen, List.of(shaft, shaft, shaft));
        double only = LumenFlow.at(lumen, EnclosingCircle.discs(shaft, shaft, shaft).discs());
        assertEquals(0.995, fraction.low() / only, 1e-6);
        assertEquals(1.005, fraction.high() / only, 1e-6);
    }

    /** A hair that hides where the shaft touches the wall costs nothing that the shaft has not cost already. */
    @Test
    void upperEndIsProvedByTheThickestDevice() {
        assertEquals(interval("1").high(), interval("0.001", "1").high());
    }

    @Test
    void orderDoesNotMatter() {
        assertEquals(interval("0.3", "0.5", "0.7"), interval("0.7", "0.3", "0.5"));
    }

    /** The shaft alone may lie in the centre; with a wire that fills the rest it cannot, and more is left. */
    @Test
    void lowerEndRisesWhereADeviceMustLeaveTheCentre() {
        assertTrue(interval("1.8", "0.2").low() > 1.5 * interval("1.8").low());
        assertTrue(interval("1.8", "0.2").high() < interval("1.8").high());
    }

    @Test
    void namesWhatDoesNotFit() {
        assertRefused("[1.2 mm, 0.9 mm] need 2.1 mm and do not lie in 2 mm together", "0.9", "0", "1.2");
        assertRefused("[2.1 mm] need 2.1 mm and do not lie in 2 mm together", "2.1");
        assertRefused("negative diameter: -1 mm", "0.9", "-1");
        assertRefused("9 devices, at most 8", Collections.nCopies(9, "0").toArray(String[]::new));
    }

    private static void assertRefused(String message, String... devices) {
        assertEquals(message, assertThrows(IllegalArgumentException.class, () -> interval(devices)).getMessage());
    }

    @Test
    void refusesALumenWithoutDiameter() {
        assertEquals("a lumen of 0 mm", assertThrows(IllegalArgumentException.class,
                () -> LumenFlow.interval(Length.ZERO, List.of())).getMessage());
    }

    @ParameterizedTest
    @CsvSource({ "-0.1, 0.5", "0.6, 0.5", "0.5, 1.1", "NaN, 1", "0, NaN" })
    void refusesWhatIsNoInterval(double low, double high) {
        assertEquals("no interval of shares: " + low + " to " + high,
                assertThrows(IllegalArgumentException.class, () -> new OpenFraction(low, high, true)).getMessage());
    }
}
