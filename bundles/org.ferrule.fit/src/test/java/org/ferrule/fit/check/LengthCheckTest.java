/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleClaim.minimumLumen;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Reason.distance;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.UNKNOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.junit.jupiter.api.Test;

/** Whether a device is long enough for what is asked; no claim about diameters speaks of that. */
class LengthCheckTest {

    @Test
    void reachWithinTheLengthFits() {
        assertEquals(FITS, passage(shaft("135 cm"), guide("g", "1 mm")).reach("35 cm").in().verdict());
    }

    @Test
    void reachBeyondTheLengthIsBlocked() {
        PhaseAnswer answer = passage(shaft("135 cm"), guide("g", "1 mm")).reach("42 cm").in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(Reason.of(ReasonCode.TOO_SHORT, distance(length("7 cm")), distance(length("135 cm")),
                distance(length("142 cm"))),
                answer.reasons().stream()
                        .filter(r -> r.code() == ReasonCode.TOO_SHORT).findFirst().orElseThrow());
    }

    @Test
    void shorterGuideGivesMoreReach() {
        SampleDevice guide90 = device("g", GUIDE_CATHETER).length("90 cm").working("90 cm", "1 mm");
        assertEquals(FITS, passage(shaft("135 cm"), guide90).reach("42 cm").in().verdict());
    }

    @Test
    void withoutAReachNoLengthIsTooShort() {
        assertEquals(FITS, passage(shaft("40 cm"), guide("g", "1 mm")).in().verdict());
    }

    @Test
    void lengthThatIsNotStatedIsUnknown() {
        PhaseAnswer answer = passage(device("b", BALLOON_CATHETER), guide("g", "1 mm")).reach("10 cm").in();
        assertEquals(UNKNOWN, answer.verdict());
        assertEquals(1, answer.reasons().stream().filter(r -> r.code() == ReasonCode.LENGTH_NOT_STATED).count());
    }

    @Test
    void claimAboutDiametersDoesNotMakeADeviceLonger() {
        SampleDevice claimed = shaft("120 cm").claim(minimumLumen("1 mm").kinds(GUIDE_CATHETER));
        assertEquals(BLOCKED, passage(claimed, guide("g", "1 mm")).reach("42 cm").in().verdict());
        assertEquals(FITS, passage(claimed, guide("g", "1 mm")).in().verdict());
    }

    @Test
    void wireMustReachThroughTheLumenAndAhead() {
        SampleDevice micro = shaft("135 cm").overTheWire("135 cm", "0.4 mm");
        SampleDevice wire = rod("w", GUIDEWIRE, "190 cm", "0.3 mm");
        assertEquals(FITS, passage(wire, micro).overTail().reach("55 cm").in().verdict());
        assertEquals(BLOCKED, passage(wire, micro).overTail().reach("56 cm").in().verdict());
    }

    private static SampleDevice shaft(String effectiveLength) {
        return rod("m", MICROCATHETER, effectiveLength, "0.9 mm");
    }
}
