/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.UNKNOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.ReasonCode;
import org.junit.jupiter.api.Test;

/** A device loaded over the tail of a wire: the wire counts from its proximal end to where the device stops. */
class OverWireTailTest {

    @Test
    void springTipWithinTheWireAheadDoesNotMatter() {
        assertEquals(FITS, passage(springTipped("22 mm"), narrow()).overTail().in().verdict());
        assertEquals(FITS, passage(springTipped("30 mm"), narrow()).overTail().in().verdict());
    }

    @Test
    void springTipBeyondTheWireAheadBlocks() {
        PhaseAnswer answer = passage(springTipped("40 mm"), narrow()).overTail().in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(length("40 mm"), answer.reach().get(), "wire left ahead of the device that is stopped");
        assertEquals(length("40 mm"), answer.limiting().get().deviceStation());
        assertEquals(length("135 cm"), answer.limiting().get().lumenStation(), "the tip of the outer device");
    }

    @Test
    void wireAheadThatIsAskedForReplacesTheRule() {
        assertEquals(BLOCKED, passage(springTipped("22 mm"), narrow()).overTail().reach("21 mm").in().verdict());
        assertEquals(FITS, passage(springTipped("40 mm"), narrow()).overTail().reach("40 mm").in().verdict());
    }

    @Test
    void tipFirstTheSpringTipBlocksAtOnce() {
        PhaseAnswer answer = passage(springTipped("22 mm"), narrow()).in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(length("-135 cm"), answer.reach().get());
    }

    @Test
    void ruleSetMustSayHowMuchWireStaysAhead() {
        TestRules silent = TestRules.silent().spans("0 mm", "0 mm").required("0 mm");
        assertThrows(RuleSetException.class,
                () -> passage(springTipped("22 mm"), narrow()).overTail().under(silent).in());
        assertEquals(FITS, passage(springTipped("22 mm"), narrow()).overTail().under(silent).reach("3 cm").in()
                .verdict());
    }

    @Test
    void negativeWireAheadIsRefused() {
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> passage(springTipped("22 mm"), narrow()).overTail().reach("-1 mm").question());
        assertTrue(refused.getMessage().contains("-1"));
    }

    @Test
    void wireMustBeLongEnoughToComeOutAtTheHub() {
        PhaseAnswer answer = passage(rod("w", GUIDEWIRE, "137 cm", "0.2 mm"), narrow()).overTail().in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(ReasonCode.TOO_SHORT, answer.reasons().get(0).code());
        assertEquals(FITS, passage(rod("w", GUIDEWIRE, "138 cm", "0.2 mm"), narrow()).overTail().in().verdict());
    }

    @Test
    void wireThatIsThickerProximallyCountsFromItsTail() {
        SampleDevice wire = device("w", GUIDEWIRE).length("300 cm").section("taper", "0 cm", "10 cm", "0.25 mm")
                .section("shaft", "10 cm", "300 cm", "0.40 mm");
        PhaseAnswer answer = passage(wire, narrow()).overTail().in();
        assertEquals(length("300 cm"), answer.reach().get());
        assertEquals("shaft", answer.limiting().get().deviceSection());
    }

    @Test
    void onlyTheWireLumenOfARapidExchangeDeviceMatters() {
        SampleDevice wire = rod("w", GUIDEWIRE, "190 cm", "0.014 in");
        PhaseAnswer answer = passage(wire, balloon("b", "0.85 mm", "0.69 mm")).overTail().in();
        assertEquals(length("0.016 in").minus(length("0.014 in")), answer.clearance().get().nominal());
        assertEquals(length("30 mm"), answer.reach().get());
    }

    @Test
    void lumenThatOpensBehindTheTipKeepsTheWireAheadOfTheTip() {
        SampleDevice sideHole = device("d", MICROCATHETER).length("140 cm")
                .lumen("wire", Lumen.Use.WIRE, Lumen.Opening.HUB, "10 mm", "140 cm").bore("0 cm", "139 cm", "0.3 mm");
        assertEquals(FITS, passage(springTipped("39 mm"), sideHole).overTail().in().verdict());
        PhaseAnswer answer = passage(springTipped("50 mm"), sideHole).overTail().in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(length("40 mm"), answer.reach().get());
    }

    @Test
    void wireOfUnknownLengthIsUnknown() {
        SampleDevice wire = device("w", GUIDEWIRE).section("tip", "0 cm", "30 cm", "0.2 mm");
        assertEquals(UNKNOWN, passage(wire, narrow()).overTail().in().verdict());
    }

    private static SampleDevice springTipped(String springLength) {
        return device("w", GUIDEWIRE).length("330 cm").section("spring tip", "0 mm", springLength, "0.35 mm")
                .section("shaft", springLength, "330 cm", "0.22 mm");
    }

    private static SampleDevice narrow() {
        return rod("m", MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm", "0.28 mm");
    }
}
