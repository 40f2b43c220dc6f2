/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleClaim.minimumLumen;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** What an answer tells beside its verdict, and how a question counts its way. */
class PhaseAnswerTest {
    private static final SampleDevice MICRO = rod("m", MICROCATHETER, "135 cm", "0.9 mm");

    @Test
    void aClaimAgainstTheGeometryIsAConflictAndNoCaution() {
        PhaseAnswer claimed = passage(rod("m", MICROCATHETER, "135 cm", "1.1 mm")
                .claim(minimumLumen("0.9 mm").kinds(GUIDE_CATHETER)), guide("g", "1 mm")).in();
        assertTrue(claimed.hasConflict());
        assertFalse(claimed.hasCaution());
        PhaseAnswer plain = passage(MICRO, guide("g", "1 mm")).in();
        assertFalse(plain.hasConflict());
        assertFalse(plain.hasCaution());
    }

    @Test
    void aStepIsACautionAndNoConflict() {
        PhaseAnswer step = passage(MICRO, device("x", DeviceKind.GUIDE_EXTENSION).length("150 cm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm").bore("0 cm", "25 cm", "1 mm"))
                .in();
        assertTrue(step.hasCaution());
        assertFalse(step.hasConflict());
    }

    @Test
    void eachPhaseHasItsAnswer() {
        FitAnswer answer = passage(balloon("b", "0.85 mm", "0.6 mm"), guide("g", "1.1 mm"))
                .under(TestRules.exact().growth("1.4", "1.5", "1.6")).answer();
        assertNotEquals(answer.in().verdict(), answer.out().verdict());
        assertEquals(answer.in(), answer.in(Phase.IN));
        assertEquals(answer.out(), answer.in(Phase.OUT));
    }

    @Test
    void onlyWhatIsUnknownSaysWhy() {
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm"), guide("g", "2 mm"))
                .beside(rod("a", DeviceKind.OTHER, "135 cm", "0.4 mm"), "5 cm")
                .beside(rod("b", DeviceKind.OTHER, "135 cm", "?"), "5 cm").under(TestRules.usual()).in();
        assertEquals(Verdict.UNKNOWN, answer.verdict());
        assertEquals(List.of(Reason.of(ReasonCode.MISSING_FIGURE, Reason.name("b"), Reason.name("outer diameter"),
                Reason.name("shaft"))), answer.reasons().stream()
                        .filter(r -> r.code().weight() == ReasonCode.Weight.DECIDES).toList());
    }

    @Test
    void theLumenAlongTheWayIsThatOfAnExtensionFromItsCollarToItsTip() {
        SampleDevice extension = device("x", DeviceKind.GUIDE_EXTENSION).length("150 cm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.5 mm").section("tube", "0 cm", "25 cm", "1.7 mm")
                .section("push rod", "25 cm", "150 cm", "0.4 mm");
        List<Stretch> way = passage(MICRO, guide("g", "2 mm")).through(extension, "5 cm").question().bore();
        assertEquals(List.of("bore 1", "x bore 1"), way.stream().map(Stretch::name).toList());
        assertEquals(List.of(length("80 cm"), length("105 cm")), way.stream().map(Stretch::to).toList());
        assertEquals(length("1.5 mm"), way.get(1).diameter().orElseThrow().start().centre());
        List<Stretch> inside = passage(MICRO, guide("g", "2 mm")).through(extension, "-5 cm").question().bore();
        assertEquals(List.of(Length.ZERO, length("70 cm"), length("95 cm")), inside.stream().map(Stretch::from)
                .toList());
        assertEquals(List.of("bore 1", "x bore 1", "bore 1"), inside.stream().map(Stretch::name).toList());
        assertEquals(1, passage(MICRO, guide("g", "2 mm")).question().bore().size());
    }

    @Test
    void aSectionThatEndsAtTheCollarLeavesNothingBehindIt() {
        SampleDevice guide = device("g", GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm")
                .bore("0 mm", "80 cm", "2 mm").bore("80 cm", "100 cm", "1.9 mm");
        SampleDevice extension = device("x", DeviceKind.GUIDE_EXTENSION).length("150 cm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.5 mm").section("rod", "25 cm", "150 cm", "0.4 mm");
        assertEquals(List.of("bore 1", "x bore 1"), passage(MICRO, guide).through(extension, "5 cm").question().bore()
                .stream().map(Stretch::name).toList());
    }
}
