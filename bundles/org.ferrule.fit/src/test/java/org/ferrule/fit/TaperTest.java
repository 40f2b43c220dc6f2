/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.junit.jupiter.api.Test;

/** Tapers: the stop lies inside them, and interpolated diameters are never rounded to the better side. */
class TaperTest {

    @Test
    void stopsInsideATaperOfTheDevice() {
        PhaseAnswer answer = passage(tapered("0.8 mm", "1.2 mm"), guide("g", "1 mm")).in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(length("200 mm"), answer.limiting().get().deviceStation());
        assertEquals(length("-800 mm"), answer.reach().get());
    }

    @Test
    void stopsInsideATaperOfTheLumen() {
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "1 m", "1 mm"), funnel("1.2 mm", "0.8 mm")).in();
        assertEquals(length("200 mm"), answer.limiting().get().lumenStation());
        assertEquals(length("-200 mm"), answer.reach().get());
    }

    @Test
    void stopsWhereTwoTapersMeet() {
        PhaseAnswer answer = passage(tapered("0.8 mm", "1.0 mm"), funnel("1.2 mm", "0.8 mm")).in();
        // 0.8 + 0.001 (s - 100) > 1.2 - 0.001 x first holds when x + s = 500 mm.
        assertEquals(length("100 mm"), answer.reach().get());
    }

    @Test
    void stopIsWhereItOverlapsAndNotJustBefore() {
        // 0.8 + 0.35 (s - 100) / 200 > 1 first holds behind 214.285714... mm.
        PhaseAnswer answer = passage(tapered("0.8 mm", "1.15 mm"), guide("g", "1 mm")).in();
        assertTrue(answer.clearance().get().nominal().isNegative());
        assertEquals(214.285714, answer.limiting().get().deviceStation().mm(), 1e-3);
    }

    @Test
    void widerEndOfATaperDecides() {
        assertEquals(length("0.1 mm"),
                passage(tapered("0.8 mm", "0.9 mm"), guide("g", "1 mm")).in().clearance().get().nominal());
        assertEquals(length("0.1 mm"),
                passage(tapered("0.9 mm", "0.8 mm"), guide("g", "1 mm")).in().clearance().get().nominal());
    }

    @Test
    void onlyThePartOfATaperThatEntersCounts() {
        SampleDevice device = tapered("0.8 mm", "1.2 mm");
        assertEquals(TIGHT, passage(device, guide("g", "1 mm")).reach("-80 cm").in().verdict());
        assertEquals(FITS, passage(device, guide("g", "1 mm")).reach("-82 cm").in().verdict());
        assertEquals(BLOCKED, passage(device, guide("g", "1 mm")).reach("-79.9 cm").in().verdict());
    }

    @Test
    void diameterBetweenTwoFiguresIsRoundedAgainstTheDevice() {
        // At 100.5 mm from its tip the taper is 0.8 mm and a third of a third of a nanometre thick.
        SampleDevice device = device("m", MICROCATHETER).length("1 m").section("tip", "0 mm", "100 mm", "0.5 mm")
                .taper("taper", "100 mm", "103 mm", "2.4 Fr", "2.400002 Fr")
                .section("shaft", "103 mm", "1 m", "2.5 Fr");
        assertEquals(TIGHT, passage(device, guide("g", "0.825 mm")).reach("-899.5 mm").in().verdict());
        assertEquals(FITS, passage(device, guide("g", "0.825 mm")).reach("-900 mm").in().verdict());
    }

    @Test
    void diameterBetweenTwoFiguresIsRoundedAgainstTheLumen() {
        SampleDevice guide = device("g", MICROCATHETER).length("1 m")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "1 m")
                .taperedBore("0 mm", "3 mm", "2.475 Fr", "2.474998 Fr").bore("3 mm", "1 m", "2 Fr");
        assertEquals(TIGHT, passage(rod("m", MICROCATHETER, "1 m", "2.4 Fr"), guide).reach("-999.5 mm").in().verdict());
    }

    private static SampleDevice tapered(String distal, String proximal) {
        return device("m", MICROCATHETER).length("1 m").section("tip", "0 mm", "100 mm", distal)
                .taper("taper", "100 mm", "300 mm", distal, proximal).section("shaft", "300 mm", "1 m", proximal);
    }

    private static SampleDevice funnel(String proximal, String distal) {
        return device("g", MICROCATHETER).length("400 mm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "400 mm")
                .taperedBore("0 mm", "400 mm", proximal, distal);
    }
}
