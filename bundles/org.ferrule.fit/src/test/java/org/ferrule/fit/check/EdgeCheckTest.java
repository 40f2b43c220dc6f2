/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Steps on the way are cautions, never verdicts. */
class EdgeCheckTest {

    @Test
    void collarOfAnExtensionIsACautionGoingIn() {
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm"), extension()).in();
        assertEquals(Verdict.FITS, answer.verdict());
        assertEquals(List.of(Reason.of(ReasonCode.COLLAR_STEP)), cautions(answer));
    }

    @Test
    void collarIsNoStepComingOut() {
        assertEquals(List.of(), cautions(passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm"), extension()).out()));
    }

    @Test
    void hubIsNoStep() {
        SampleDevice rod = rod("m", MICROCATHETER, "135 cm", "0.9 mm");
        assertEquals(List.of(), cautions(passage(rod, guide("g", "1 mm")).in()));
    }

    @Test
    void overAWireThereIsNoStep() {
        assertEquals(List.of(),
                cautions(passage(rod("w", GUIDEWIRE, "190 cm", "0.3 mm"), extension()).overTail().in()));
    }

    private static List<Reason> cautions(PhaseAnswer answer) {
        return answer.reasons().stream().filter(r -> r.code().weight() == ReasonCode.Weight.CAUTION).toList();
    }

    private static SampleDevice extension() {
        return device("x", GUIDE_EXTENSION).length("150 cm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm").bore("0 cm", "25 cm", "1 mm");
    }
}
