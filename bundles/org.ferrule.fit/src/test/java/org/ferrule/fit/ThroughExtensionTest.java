/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.device.DeviceKind.OTHER;
import static org.ferrule.fit.device.DeviceKind.STENT_SYSTEM;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.UNKNOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.junit.jupiter.api.Test;

/** Through an extension: its tube of 25 cm replaces the guide's lumen, its push rod lies beside the device before. */
class ThroughExtensionTest {
    private static final SampleDevice GUIDE = guide("g", "0.070 in");

    @Test
    void tubeReplacesTheLumenFromItsCollarToItsTip() {
        PhaseAnswer answer = passage(micro("1.5 mm"), GUIDE).through(extension("1.43 mm", "0.2 mm"), "10 cm").in();
        assertEquals(BLOCKED, answer.verdict());
        // The guide is 100 cm long, the tip 110, so the collar lies 85 cm from the hub.
        assertEquals(length("85 cm"), answer.limiting().get().lumenStation());
        assertEquals("x bore 1", answer.limiting().get().lumenSection());
        assertEquals(FITS, passage(micro("1.5 mm"), GUIDE).in().verdict());
    }

    @Test
    void protrusionMovesTheCollar() {
        assertEquals(length("70 cm"),
                passage(micro("1.5 mm"), GUIDE).through(extension("1.43 mm", "0.2 mm"), "-5 cm").in().limiting()
                        .get().lumenStation());
    }

    @Test
    void pushRodLiesBesideTheDeviceProximalToTheCollar() {
        // 1.4 mm and the rod of 0.4 mm fill more than 1.778 mm from the hub on; in the tube of 1.43 mm there is room.
        PhaseAnswer answer = passage(micro("1.40 mm"), GUIDE).through(extension(), "10 cm").in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(length("0 cm"), answer.limiting().get().lumenStation());
        assertEquals(length("1.8 mm"), answer.limiting().get().deviceDiameter().centre());
        assertEquals(FITS, passage(micro("1.35 mm"), GUIDE).through(extension(), "10 cm").in().verdict());
    }

    @Test
    void wireOfTheExtensionIsThatOfTheDeviceThatPasses() {
        // 1.35 + 0.4 mm leave 0.028 mm: a wire beside the rod would not find room.
        SampleDevice over = micro("1.35 mm").takesWire("0.014 in").overTheWire("135 cm", "0.4 mm");
        assertEquals(FITS, passage(over, GUIDE).through(extension().takesWire("?"), "10 cm").in().verdict());
        SampleDevice rapid = micro("1.35 mm").takesWire("0.014 in").sidePort("25 cm", "0.4 mm");
        assertEquals(BLOCKED, passage(rapid, GUIDE).through(extension(), "10 cm").in().verdict());
    }

    @Test
    void withdrawnIntoTheGuideTheTubeEndsInside() {
        // From the tip of the extension, 5 cm before that of the guide, the guide's lumen is the way again.
        SampleDevice narrow = device("g", OTHER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 cm", "100 cm")
                .bore("0 cm", "96 cm", "0.070 in").bore("96 cm", "100 cm", "1.2 mm");
        assertEquals(BLOCKED, passage(micro("1.3 mm"), narrow).through(extension(), "-5 cm").in().verdict());
        assertEquals(FITS, passage(micro("1.3 mm"), narrow).through(extension(), "0 cm").in().verdict());
    }

    @Test
    void othersLieInTheTubeToo() {
        SampleQuestion question = passage(micro("0.8 mm"), GUIDE).through(extension(), "10 cm");
        assertEquals(FITS, question.in().verdict());
        Limiting limiting = question.beside(rod("a", OTHER, "150 cm", "0.7 mm"), "5 cm").in().limiting().get();
        assertEquals("x bore 1", limiting.lumenSection());
        assertEquals(length("1.5 mm"), limiting.deviceDiameter().centre());
    }

    @Test
    void othersThatEndBeforeTheCollarLieBesideTheRodOnly() {
        PhaseAnswer answer = passage(micro("0.8 mm"), GUIDE).through(extension(), "10 cm")
                .beside(rod("a", OTHER, "100 cm", "0.7 mm"), "-20 cm").in();
        assertEquals(FITS, answer.verdict());
    }

    @Test
    void reachCountsFromTheTipThatProtrudes() {
        SampleQuestion question = passage(micro("1.2 mm"), GUIDE).through(extension(), "10 cm").reach("25 cm");
        assertEquals(FITS, question.in().verdict());
        assertEquals(length("25 cm"), question.in().reach().get());
        assertEquals(BLOCKED, question.reach("26 cm").in().verdict());
        assertTrue(question.in().reasons().contains(
                Reason.of(ReasonCode.REACH_FROM_EXTENSION, Reason.name("x"), Reason.distance(length("10 cm")))));
    }

    @Test
    void reachCountsFromTheGuideWhereTheExtensionStaysInside() {
        SampleQuestion question = passage(micro("1.2 mm"), GUIDE).through(extension(), "-10 cm").reach("35 cm");
        assertEquals(FITS, question.in().verdict());
        assertFalse(has(question.in(), ReasonCode.REACH_FROM_EXTENSION));
    }

    @Test
    void collarIsACaution() {
        SampleQuestion question = passage(micro("1.2 mm"), GUIDE).through(extension(), "10 cm");
        assertTrue(has(question.in(), ReasonCode.COLLAR_STEP));
        assertFalse(has(question.out(), ReasonCode.COLLAR_STEP));
    }

    @Test
    void tipIsAnOpenEdgeForWhatDeploys() {
        SampleDevice stent = rod("s", STENT_SYSTEM, "140 cm", "1.2 mm").deploys();
        assertTrue(has(passage(stent, GUIDE).through(extension(), "10 cm").reach("1 cm").out(), ReasonCode.OPEN_EDGE));
        assertFalse(has(passage(stent, GUIDE).through(extension(), "10 cm").reach("-1 cm").out(),
                ReasonCode.OPEN_EDGE));
        assertTrue(has(passage(stent, GUIDE).through(extension(), "-10 cm").reach("-1 cm").out(),
                ReasonCode.OPEN_EDGE));
    }

    @Test
    void extensionThatDoesNotGoInIsACaution() {
        SampleDevice five = guide("g", "0.058 in");
        assertTrue(has(passage(micro("0.9 mm"), five).through(extension(), "10 cm").in(),
                ReasonCode.EXTENSION_TOO_THICK));
        assertFalse(has(passage(micro("0.9 mm"), GUIDE).through(extension(), "10 cm").in(),
                ReasonCode.EXTENSION_TOO_THICK));
    }

    @Test
    void collarThatWouldLieOutsideTheHubIsUnknown() {
        SampleDevice sheath = device("sheath", OTHER).length("11 cm").working("11 cm", "0.070 in");
        PhaseAnswer answer = passage(micro("1.2 mm"), sheath).through(extension(), "10 cm").in();
        assertEquals(UNKNOWN, answer.verdict());
        assertTrue(answer.reasons().contains(
                Reason.of(ReasonCode.COLLAR_OUTSIDE, Reason.name("x"), Reason.distance(length("4 cm")))));
        assertEquals(BLOCKED, passage(micro("1.5 mm"), sheath).through(extension(), "10 cm").in().verdict());
    }

    @Test
    void tubeWhollyOutsideIsRefused() {
        SampleQuestion question = passage(micro("1.2 mm"), GUIDE).through(extension(), "25 cm");
        String message = assertThrows(IllegalArgumentException.class, question::question).getMessage();
        assertTrue(message.contains("x") && message.contains("250"), message);
    }

    @Test
    void extensionWhoseCollarNobodyPlacesIsUnknown() {
        SampleDevice open = rod("x", GUIDE_EXTENSION, "150 cm", "0.067 in").lumen("tube", Lumen.Use.WORKING,
                Lumen.Opening.COLLAR, "0 cm", "0 cm");
        assertEquals(UNKNOWN, passage(micro("1.2 mm"), GUIDE).through(open, "10 cm").in().verdict());
    }

    @Test
    void missingFigureOfTheTubeOrTheRodIsUnknown() {
        assertEquals(UNKNOWN, passage(micro("1 mm"), GUIDE).through(extension("?", "0.4 mm"), "10 cm").in().verdict());
        assertEquals(UNKNOWN, passage(micro("1 mm"), GUIDE).through(extension("1.43 mm", "?"), "10 cm").in().verdict());
    }

    @Test
    void overTheTailOfAWireNoExtensionIsAsked() {
        SampleDevice over = micro("1.2 mm").overTheWire("135 cm", "0.4 mm");
        SampleQuestion question = passage(rod("w", GUIDEWIRE, "300 cm", "0.3 mm"), over).overTail().through(
                extension(), "10 cm");
        assertThrows(IllegalArgumentException.class, question::question);
    }

    private static boolean has(PhaseAnswer answer, ReasonCode code) {
        return answer.reasons().stream().anyMatch(r -> r.code() == code);
    }

    private static SampleDevice micro(String diameter) {
        return rod("m", MICROCATHETER, "135 cm", diameter);
    }

    private static SampleDevice extension() {
        return extension("1.43 mm", "0.4 mm");
    }

    private static SampleDevice extension(String inner, String rod) {
        return device("x", GUIDE_EXTENSION).length("150 cm").takesWire("0.014 in")
                .section("tube", "0 cm", "25 cm", "0.067 in").section("push rod", "25 cm", "150 cm", rod)
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm").bore("0 cm", "25 cm", inner);
    }
}
