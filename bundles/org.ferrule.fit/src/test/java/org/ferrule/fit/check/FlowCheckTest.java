/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.FlowLeft;
import org.ferrule.fit.rules.Limits.FlowUse;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The flow that is left, as a caution. */
class FlowCheckTest {

    /** Annulus, exact: concentric by Bird, Stewart and Lightfoot (from memory), on the wall by Piercy (1933); computed. */
    @ParameterizedTest
    @CsvSource({ "0.014 in, 0.070 in, 0.426, 0.807", "2.6 Fr, 0.070 in, 0.135, 0.311", "2.6 Fr, 0.081 in, 0.186, 0.417",
        "0.024 in, 0.070 in, 0.259, 0.555" })
    void oneDeviceLeavesWhatTheAnnulusLeaves(String device, String lumen, double centred, double onWall) {
        FlowLeft left = left(
                find(new FlowCheck(), passage(rod("d", MICROCATHETER, "135 cm", device), guide("g", lumen)),
                        "0.5"));
        assertEquals(centred, left.low(), 0.001);
        assertEquals(onWall, left.high(), 0.001);
        assertTrue(left.exact());
    }

    @Test
    void limitsAreCautionsAndNeverVerdicts() {
        SampleQuestion shaft = passage(rod("d", MICROCATHETER, "135 cm", "2.6 Fr"), guide("g", "0.070 in"));
        assertEquals(List.of(), codes(find(new FlowCheck(), shaft, "0.1")));
        assertEquals(List.of(ReasonCode.FLOW_MAY_BE_LOW), codes(find(new FlowCheck(), shaft, "0.2")));
        Finding low = find(new FlowCheck(), shaft, "0.4");
        assertEquals(List.of(ReasonCode.FLOW_TOO_LOW), codes(low));
        assertEquals(Verdict.FITS, low.verdict());
    }

    /** Contrast is given through guides, not beside them, and through an extension as well as past it. */
    @Test
    void saysNothingWhereContrastGoesThroughTheInnerDevice() {
        SampleQuestion extension = passage(rod("e", DeviceKind.GUIDE_EXTENSION, "150 cm", "0.066 in"),
                guide("g", "0.070 in"));
        assertEquals(List.of(), codes(find(new FlowCheck(), extension, "0.4")));
        SampleQuestion sheathed = passage(rod("g", DeviceKind.GUIDE_CATHETER, "100 cm", "2.1 mm"),
                device("s", DeviceKind.INTRODUCER_SHEATH).length("11 cm").working("11 cm", "2.2 mm"));
        assertEquals(List.of(), codes(find(new FlowCheck(), sheathed, "0.4")));
    }

    @Test
    void withoutALimitItSaysNothing() {
        SampleQuestion shaft = passage(rod("d", MICROCATHETER, "135 cm", "2.6 Fr"), guide("g", "0.070 in"));
        assertEquals(Finding.SILENT, new FlowCheck().check(shaft.question(), Phase.IN));
    }

    @Test
    void severalDevicesAreSearchedOnlyInDetail() {
        // two shafts of 2.6 Fr that touch leave about 7 % of 0.070 in (computed)
        SampleQuestion two = passage(rod("d", MICROCATHETER, "135 cm", "2.6 Fr"), guide("g", "0.070 in"))
                .beside(rod("o", MICROCATHETER, "135 cm", "2.6 Fr"), "5 cm");
        assertEquals(List.of(), find(new FlowCheck(), two, "0.2").evidence());
        Finding detailed = find(new FlowCheck().inDetail(), two, "0.2");
        assertTrue(left(detailed).low() <= 0.07 && 0.07 <= left(detailed).high() + 0.01, detailed::toString);
        assertEquals(List.of(ReasonCode.FLOW_TOO_LOW), codes(detailed));
    }

    @Test
    void quickCheckTellsWhatTheThickestAloneProves() {
        SampleQuestion two = passage(rod("d", MICROCATHETER, "135 cm", "2.6 Fr"), guide("g", "0.070 in"))
                .beside(rod("o", GUIDEWIRE, "190 cm", "0.014 in"), "5 cm");
        assertEquals(List.of(ReasonCode.FLOW_TOO_LOW), codes(find(new FlowCheck(), two, "0.4")));
    }

    @Test
    void ownWireBesideAShaftCounts() {
        SampleQuestion rapidExchange = passage(balloon("b", "0.8 mm", "0.024 in"), guide("g", "0.070 in"));
        FlowLeft left = left(find(new FlowCheck().inDetail(), rapidExchange, "0.5"));
        assertTrue(left.high() < 0.555, "less than the hypotube alone leaves on the wall");
    }

    @Test
    void whatDoesNotFitLeavesNothingToSay() {
        SampleQuestion thick = passage(rod("d", MICROCATHETER, "135 cm", "2 mm"), guide("g", "0.070 in"));
        assertEquals(Finding.SILENT, find(new FlowCheck(), thick, "0.5"));
    }

    /** In the proximal half two lie in 2 mm; in the distal half one lies in what is narrower. */
    @Test
    void thePlaceThatLeavesLeastIsTold() {
        assertEquals(length("1.5 mm"), narrowest("1.5 mm", "0.2 mm"));
        assertEquals(length("2 mm"), narrowest("1.9 mm", "0.9 mm"));
    }

    private static Length narrowest(String distal, String beside) {
        SampleDevice stepped = device("g", DeviceKind.GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm")
                .bore("0 mm", "50 cm", "2 mm").bore("50 cm", "100 cm", distal);
        return left(find(new FlowCheck().inDetail(), passage(rod("d", MICROCATHETER, "135 cm", "0.9 mm"), stepped)
                .beside(rod("w", GUIDEWIRE, "190 cm", beside), "-50 cm"), "0.9")).lumen();
    }

    private static Finding find(FitCheck check, SampleQuestion question, String leastContrast) {
        return check.check(question.under(TestRules.exact().leastFlow(FlowUse.CONTRAST, leastContrast)).question(),
                Phase.IN);
    }

    private static FlowLeft left(Finding finding) {
        return (FlowLeft) finding.evidence().get(0);
    }

    private static List<ReasonCode> codes(Finding finding) {
        return finding.reasons().stream().map(Reason::code).toList();
    }

    @Test
    void whatFillsTheLumenLeavesNothing() {
        FlowLeft left = left(find(new FlowCheck(), passage(rod("d", MICROCATHETER, "135 cm", "2 mm"),
                guide("g", "2 mm")), "0.5"));
        assertEquals(0, left.high(), 1e-9);
    }

    @Test
    void theSameIsToldWhenAskedAgain() {
        FitCheck check = new FlowCheck();
        SampleQuestion shaft = passage(rod("d", MICROCATHETER, "135 cm", "2.6 Fr"), guide("g", "0.070 in"));
        assertEquals(find(check, shaft, "0.4"), find(check, shaft, "0.4"));
    }

    /** What all the lumen's flow goes past is no limit that is missed. */
    @Test
    void aLimitThatIsMetIsNoCaution() {
        SampleQuestion thin = passage(rod("d", MICROCATHETER, "135 cm", "0.2 mm"), guide("g", "2 mm"));
        assertEquals(List.of(), codes(find(new FlowCheck(), thin, "0.3")));
    }
}
