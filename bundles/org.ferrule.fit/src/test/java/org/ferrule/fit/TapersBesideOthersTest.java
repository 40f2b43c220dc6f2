/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.OTHER;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Dimension;
import org.junit.jupiter.api.Test;

/** What tapers, or runs from one form into another, beside a device that lies still. */
class TapersBesideOthersTest {

    /** 1.2 mm wide, 0.6 mm high, it lies beside 0.4 mm in 1.5 mm; where it becomes round nobody tells how high it is. */
    @Test
    void whatMayBeThinnerThanItCountsProvesNoOverlap() {
        Contour oval = new Contour.Oval(Dimension.parse("1.2 mm"), Dimension.parse("0.6 mm"));
        Contour round = new Contour.Round(Optional.of(Dimension.parse("0.9 mm")));
        SampleDevice uneven = device("o", OTHER).length("135 cm").contour("shaft", "0 cm", "135 cm", oval, round);
        SampleQuestion question = passage(uneven, guide("g", "1.5 mm"));
        assertEquals(FITS, question.in().verdict());
        PhaseAnswer beside = question.beside(rod("a", OTHER, "135 cm", "0.4 mm"), "5 cm").in();
        assertEquals(TIGHT, beside.verdict(), beside::toString);
        assertTrue(beside.reasons().stream().anyMatch(r -> r.code() == ReasonCode.NOT_PROVED), beside::toString);
    }

    /** 1.6 mm less 0.4 mm and 0.8 mm at the one end, 2 mm less 0.4 mm and 1.2 mm at the other, and no less between. */
    @Test
    void twoRoundPartsThatTaperAreAddedUpExactly() {
        SampleDevice narrowing = device("g", GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm")
                .taperedBore("0 cm", "100 cm", "2 mm", "1.6 mm");
        SampleDevice thickening = device("d", OTHER).length("135 cm")
                .taper("shaft", "0 cm", "100 cm", "0.8 mm", "1.2 mm")
                .section("tail", "100 cm", "135 cm", "1.2 mm");
        PhaseAnswer answer = passage(thickening, narrowing).reach("0 cm")
                .beside(rod("a", OTHER, "135 cm", "0.4 mm"), "0 cm").in();
        assertEquals(length("0.4 mm"), answer.clearance().orElseThrow().worst());
        assertEquals(FITS, answer.verdict());
    }
}
