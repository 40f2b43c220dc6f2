/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.picture.Ink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Checks the yardsticks that the palette is measured with. */
class ColourVisionTest {

    @ParameterizedTest
    @CsvSource({ "50,2.6772,-79.7751, 50,0,-82.7485, 2.0425", "50,3.1571,-77.2803, 50,0,-82.7485, 2.8615",
        "50,2.5,0, 50,0,-2.5, 4.3065", "50,2.5,0, 73,25,-18, 27.1492", "50,2.5,0, 61,-5,29, 22.8977",
        "50,2.5,0, 56,-27,-3, 31.9030", "50,2.5,0, 58,24,15, 19.4535" })
    void differenceAgreesWithSharma2005Table1FromMemory(double l1, double a1, double b1, double l2, double a2,
            double b2, double difference) {
        assertEquals(difference, new Lab(l1, a1, b1).difference(new Lab(l2, a2, b2)), 0.0001);
        assertEquals(difference, new Lab(l2, a2, b2).difference(new Lab(l1, a1, b1)), 0.0001);
    }

    @ParameterizedTest
    @EnumSource(ColourVision.class)
    void whiteAndGreyStayAsTheyAre(ColourVision eyes) {
        for (int grey : new int[] { 0xFFFFFF, 0x808080, 0x202020 }) {
            Ink ink = Ink.of("test", grey);
            assertTrue(ColourVision.USUAL.lab(ink).difference(eyes.lab(ink)) < 0.6, eyes + " " + ink.hex());
        }
    }

    /** Red and green of traffic lights come much closer to each other: what the palette must not rely on. */
    @ParameterizedTest
    @EnumSource(value = ColourVision.class, names = { "PROTANOPIA", "DEUTERANOPIA" })
    void redAndGreenOfEqualLightnessComeTogether(ColourVision eyes) {
        Ink red = Ink.of("test", 0xC8643C);
        Ink green = Ink.of("test", 0x6E8C28);
        assertTrue(ColourVision.USUAL.lab(red).difference(ColourVision.USUAL.lab(green)) > 40);
        double seen = eyes.lab(red).difference(eyes.lab(green));
        assertTrue(seen < 16, () -> "" + seen);
    }

    @Test
    void blueAndGreenComeTogetherForTritanopia() {
        Ink blue = Ink.of("test", 0x2F8FB5);
        Ink green = Ink.of("test", 0x2F9A7A);
        double usual = ColourVision.USUAL.lab(blue).difference(ColourVision.USUAL.lab(green));
        double tritan = ColourVision.TRITANOPIA.lab(blue).difference(ColourVision.TRITANOPIA.lab(green));
        assertTrue(tritan < usual / 2, usual + " " + tritan);
    }
}
