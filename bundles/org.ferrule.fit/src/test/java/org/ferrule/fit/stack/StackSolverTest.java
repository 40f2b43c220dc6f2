/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.HAEMOSTASIS_VALVE;
import static org.ferrule.fit.device.DeviceKind.INTRODUCER_SHEATH;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleStack;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.statistics.JointProbability;
import org.junit.jupiter.api.Test;

/** Levels of a stack, each asked against the one that holds it. */
class StackSolverTest {

    private static SampleDevice sheath() {
        return rod("sheath", INTRODUCER_SHEATH, "11 cm", "2.5 mm").working("11 cm", "0.087 in");
    }

    private static SampleDevice guide() {
        return rod("guide", GUIDE_CATHETER, "100 cm", "2.00 mm").working("100 cm", "0.070 in");
    }

    private static SampleDevice extension(String id, String outer, String inner) {
        return device(id, GUIDE_EXTENSION).length("150 cm").takesWire("0.014 in")
                .section("tube", "0 cm", "25 cm", outer)
                .section("push rod", "25 cm", "150 cm", "0.4 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm").bore("0 cm", "25 cm", inner);
    }

    private static SampleDevice micro(String outer) {
        return rod("micro", MICROCATHETER, "150 cm", outer).overTheWire("150 cm", "0.017 in");
    }

    private static SampleDevice wire() {
        return rod("wire", GUIDEWIRE, "190 cm", "0.014 in");
    }

    private static SampleDevice valve(String bore) {
        return device("valve", HAEMOSTASIS_VALVE).length("8 cm").working("8 cm", bore);
    }

    private static SampleStack usual() {
        return SampleStack.under(TestRules.exact()).level(sheath(), "0 cm").level(guide(), "89 cm")
                .level(micro("2.6 Fr"), "10 cm").level(wire(), "5 cm");
    }

    @Test
    void everyLevelIsAskedAgainstTheOneAroundIt() {
        StackAnswer answer = usual().answer();
        assertEquals(List.of(), answer.levels().get(0).crossings());
        assertEquals(List.of("guide in sheath", "micro in guide", "wire in micro"), crossings(answer));
        assertEquals(Optional.of(Verdict.FITS), answer.levels().get(3).verdict(Phase.IN));
    }

    @Test
    void weakestLevelIsTheOneOfWorstVerdictThenLeastClearance() {
        assertEquals("wire", weakest(usual().answer()), "0.003 in are less than all others leave");
        StackAnswer blocked = SampleStack.under(TestRules.exact()).level(sheath(), "0 cm").level(guide(), "89 cm")
                .level(micro("1.8 mm"), "10 cm").level(wire(), "5 cm").answer();
        assertEquals("micro", weakest(blocked));
        assertEquals(Optional.of(Verdict.BLOCKED), blocked.weakest(Phase.IN).orElseThrow().verdict(Phase.IN));
    }

    @Test
    void sheathLargerThanTheVesselIsACautionAndNoVerdict() {
        StackAnswer answer = usual().in("radial artery", "2.4 mm").answer();
        assertEquals(List.of(ReasonCode.LARGER_THAN_VESSEL), codes(answer));
        assertEquals(2.5 / 2.4, answer.access().orElseThrow().high(), 1e-9);
        assertEquals(List.of(), codes(usual().in("radial artery", "2.6 mm").answer()));
        assertEquals(Optional.empty(), usual().in("radial artery", "?").answer().access());
    }

    @Test
    void extensionReplacesTheLumenAndItsRodLiesProximal() {
        StackAnswer answer = SampleStack.under(TestRules.exact()).level(guide(), "0 cm")
                .level(extension("x", "1.7 mm", "1.43 mm"), "5 cm").level(micro("1.4 mm"), "8 cm").answer();
        assertEquals(List.of("x in guide", "micro in guide through x"), crossings(answer));
        FitQuestion through = answer.levels().get(2).crossings().get(0).question();
        assertEquals(length("5 cm"), through.conditions().through().orElseThrow().protrusion());
        assertEquals(Optional.of(length("8 cm")), through.reach());
        assertEquals(Verdict.BLOCKED, answer.levels().get(2).verdict(Phase.IN).orElseThrow(),
                "1.4 mm beside a rod of 0.4 mm in 1.778 mm");
    }

    @Test
    void extensionInAnExtensionIsAskedAtBothCollars() {
        StackAnswer answer = SampleStack.under(TestRules.exact())
                .level(rod("guide", GUIDE_CATHETER, "100 cm", "2.7 mm").working("100 cm", "2.3 mm"), "0 cm")
                .level(extension("x", "2.2 mm", "1.8 mm"), "5 cm").level(extension("y", "1.7 mm", "1.43 mm"), "5 cm")
                .level(micro("1.2 mm"), "5 cm").answer();
        assertEquals(List.of("x in guide", "y in guide through x", "micro in guide through x", "micro in x through y"),
                crossings(answer));
        assertEquals(1, answer.levels().get(3).crossings().get(0).question().conditions().inside().size(),
                "the rod of y");
        assertEquals(Optional.of(Verdict.FITS), answer.levels().get(3).verdict(Phase.IN));
        // proximal to both collars 1.5 mm lie beside two rods of 0.4 mm, which hide behind it no more in 1.8 mm
        StackAnswer thick = SampleStack.under(TestRules.exact())
                .level(rod("guide", GUIDE_CATHETER, "100 cm", "2.7 mm").working("100 cm", "2.3 mm"), "0 cm")
                .level(extension("x", "2.2 mm", "1.8 mm"), "5 cm").level(extension("y", "1.7 mm", "1.6 mm"), "5 cm")
                .level(micro("1.5 mm"), "5 cm").answer();
        assertEquals(Optional.of(Verdict.BLOCKED), thick.levels().get(3).verdict(Phase.IN));
    }

    @Test
    void valveIsPassedByAllThatGoesInBehindIt() {
        SampleStack stack = SampleStack.under(TestRules.exact()).level(guide(), "0 cm").level(valve("1.8 mm"), "0 cm")
                .level(extension("x", "1.7 mm", "1.5 mm"), "5 cm").level(micro("0.9 mm"), "5 cm");
        StackAnswer answer = stack.answer();
        assertEquals(List.of("x in valve", "x in guide", "micro in valve", "micro in guide through x"),
                crossings(answer));
        FitQuestion inValve = answer.levels().get(3).crossings().get(0).question();
        assertEquals(1, inValve.conditions().inside().size(), "beside the push rod");
        assertEquals(Optional.of(length("110 cm")), inValve.reach());
        StackAnswer narrow = SampleStack.under(TestRules.exact()).level(guide(), "0 cm").level(valve("0.8 mm"), "0 cm")
                .level(micro("0.9 mm"), "5 cm").answer();
        assertEquals(Optional.of(Verdict.BLOCKED), narrow.levels().get(2).verdict(Phase.IN));
    }

    @Test
    void devicesSideBySideAreAskedWithThoseBeforeThem() {
        StackAnswer fits = SampleStack.under(TestRules.exact()).level(guide(), "0 cm").beside(micro("2.6 Fr"), "5 cm")
                .level(micro("2.6 Fr"), "10 cm").answer();
        assertEquals(Optional.of(Verdict.FITS), fits.levels().get(1).verdict(Phase.IN));
        assertEquals(2, fits.levels().get(1).crossings().size());
        StackAnswer blocked = SampleStack.under(TestRules.exact()).level(guide(), "0 cm")
                .beside(micro("2.7 Fr"), "5 cm").level(micro("2.7 Fr"), "10 cm").answer();
        assertEquals(Optional.of(Verdict.BLOCKED), blocked.levels().get(1).verdict(Phase.IN),
                "two of 2.7 Fr need 1.8 mm, a guide of 0.070 in has 1.778 mm");
    }

    @Test
    void whatLiesBesideATubeIsNotInIt() {
        SampleDevice buddy = rod("buddy", GUIDEWIRE, "190 cm", "0.36 mm");
        SampleDevice wide = rod("guide", GUIDE_CATHETER, "100 cm", "2.7 mm").working("100 cm", "2.3 mm");
        StackAnswer answer = SampleStack.under(TestRules.exact()).level(wide, "0 cm").beside(buddy, "20 cm")
                .level(extension("x", "1.7 mm", "1.43 mm"), "5 cm").level(micro("1.3 mm"), "8 cm").answer();
        assertEquals(Optional.of(Verdict.FITS), answer.levels().get(2).verdict(Phase.IN),
                "0.13 mm are left in the tube, which has no room for the wire");
        assertEquals(length("-20 cm"),
                answer.levels().get(2).crossings().get(0).question().conditions().inside().get(0).tipAhead());
    }

    @Test
    void jointChanceLiesBetweenItsBounds() {
        // guide 1.778, extension 1.70 outside and 1.43 inside, device 1.40 mm, sd 0.010 mm each: 0.016947 (computed,
        // checked by 4e5 draws)
        StackAnswer answer = SampleStack.under(TestRules.usual())
                .level(rod("guide", GUIDE_CATHETER, "100 cm", "2 mm").working("100 cm", "1.778 mm sd 0.010"), "0 cm")
                .level(device("x", GUIDE_EXTENSION).length("150 cm").takesWire("0.014 in")
                        .section("tube", "0 cm", "25 cm", "1.70 mm sd 0.010")
                        .section("push rod", "25 cm", "150 cm", "0.2 mm")
                        .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                        .bore("0 cm", "25 cm", "1.43 mm sd 0.010"), "5 cm")
                .level(micro("1.40 mm sd 0.010"), "8 cm").answer();
        JointProbability joint = answer.chance().orElseThrow();
        assertEquals(0.016947, joint.low(), 1e-6);
        assertEquals(0.016947 + 1.7e-8, joint.high(), 1e-6);
        assertTrue(joint.high() > joint.low());
    }

    @Test
    void tipsAreMeasuredFromTheOutermostHub() {
        StackAnswer answer = usual().answer();
        assertEquals(List.of(new Tip("sheath", length("11 cm"), Optional.of(length("0 cm"))),
                new Tip("guide", length("100 cm"), Optional.of(length("0 cm"))),
                new Tip("micro", length("110 cm"), Optional.of(length("40 cm"))),
                new Tip("wire", length("115 cm"), Optional.of(length("75 cm")))), answer.tips());
    }

    @Test
    void stackThatCannotBeIsRefusedByName() {
        assertThrows(IllegalArgumentException.class, () -> SampleStack.under(TestRules.exact()).stack());
        String message = assertThrows(IllegalArgumentException.class, () -> SampleStack.under(TestRules.exact())
                .level(guide(), "0 cm").level(wire(), "0 cm").level(wire(), "0 cm").stack()).getMessage();
        assertTrue(message.contains("\"wire\""), message);
    }

    private static List<String> crossings(StackAnswer answer) {
        return answer.levels().stream().flatMap(l -> l.crossings().stream()).map(Crossing::question)
                .map(q -> q.inner().device().id() + " in " + q.outer().device().id() + q.conditions().through()
                        .map(t -> " through " + t.extension().device().id()).orElse(""))
                .toList();
    }

    private static String weakest(StackAnswer answer) {
        return answer.weakest(Phase.IN).orElseThrow().level().device().device().device().id();
    }

    private static List<ReasonCode> codes(StackAnswer answer) {
        return answer.reasons().stream().map(Reason::code).toList();
    }
}
