/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.IMAGING_CATHETER;
import static org.ferrule.fit.device.DeviceKind.INTRODUCER_SHEATH;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Reason.distance;
import static org.ferrule.fit.verdict.Reason.name;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.ferrule.fit.verdict.Verdict.UNKNOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.rules.Limits.Purpose;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.junit.jupiter.api.Test;

/** What lengths add up to, and what is made of it. */
class LengthChainsTest {
    private static final SampleDevice MICRO = rod("m", MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm",
            "0.4 mm");

    @Test
    void tooShortByTheValveAloneIsTight() {
        assertEquals(FITS, valve(passage(MICRO, guide("g", "1 mm")).reach("27 cm")).verdict());
        PhaseAnswer answer = valve(passage(MICRO, guide("g", "1 mm")).reach("30 cm"));
        assertEquals(TIGHT, answer.verdict());
        assertTrue(codes(answer).contains(ReasonCode.SHORT_WITH_VALVE));
        assertEquals(length("3 cm"), chain(answer, LengthChain.Question.REACH).margin().negated());
    }

    @Test
    void tooShortWithoutTheValveStaysBlocked() {
        assertEquals(BLOCKED, valve(passage(MICRO, guide("g", "1 mm")).reach("36 cm")).verdict());
    }

    @Test
    void withoutAnAllowanceNothingIsAddedUp() {
        assertEquals(List.of(), passage(MICRO, guide("g", "1 mm")).reach("30 cm").in().evidence());
    }

    private static PhaseAnswer valve(SampleQuestion question) {
        return question.under(TestRules.exact().allow(Purpose.HUB_AND_VALVE, "8 cm")).in();
    }

    @Test
    void sidePortMustStayInsideTheGuide() {
        SampleDevice balloon = balloon("b", "0.8 mm", "0.6 mm");
        assertEquals(FITS, passage(balloon, guide("g", "2 mm")).reach("25 cm").in().verdict());
        PhaseAnswer outside = passage(balloon, guide("g", "2 mm")).reach("26 cm").in();
        assertEquals(TIGHT, outside.verdict());
        assertTrue(outside.reasons().contains(Reason.of(ReasonCode.PORT_OUTSIDE, name("b"), distance(length("1 cm")),
                distance(length("25 cm")), distance(length("26 cm")))));
    }

    @Test
    void portMayLeaveASheath() {
        SampleDevice sheath = device("s", INTRODUCER_SHEATH).length("11 cm").working("11 cm", "2 mm");
        assertEquals(FITS, passage(balloon("b", "0.8 mm", "0.6 mm"), sheath).reach("100 cm").in().verdict());
    }

    @Test
    void withoutAReachNoPortIsOutside() {
        assertEquals(FITS, passage(balloon("b", "0.8 mm", "0.6 mm"), guide("g", "2 mm")).in().verdict());
    }

    @Test
    void tubeOfAnExtensionMustStayInTheGuide() {
        TestRules rules = TestRules.exact().allow(Purpose.EXTENSION_OVERLAP, "10 cm");
        assertEquals(FITS, extension().reach("15 cm").under(rules).in().verdict());
        assertEquals(TIGHT, extension().reach("16 cm").under(rules).in().verdict());
        assertEquals(BLOCKED, extension().reach("26 cm").under(rules).in().verdict());
    }

    @Test
    void collarOutsideTheGuideNeedsNoRuleToBlock() {
        assertEquals(FITS, extension().reach("25 cm").in().verdict());
        PhaseAnswer outside = extension().reach("26 cm").in();
        assertEquals(BLOCKED, outside.verdict());
        assertTrue(codes(outside).contains(ReasonCode.COLLAR_BEYOND_TIP));
    }

    private static SampleQuestion extension() {
        return passage(device("x", GUIDE_EXTENSION).length("150 cm").takesWire("0.014 in")
                .section("tube", "0 cm", "25 cm", "1.7 mm")
                .section("push rod", "25 cm", "150 cm", "0.5 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm"), guide("g", "2 mm"));
    }

    @Test
    void shortWireIsACautionWithWaysOut() {
        TestRules rules = TestRules.exact().allow(Purpose.GRIP, "10 cm");
        SampleDevice wire = rod("w", GUIDEWIRE, "190 cm", "0.3 mm").parts(new Parts(Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), List.of(), Optional.of(true)));
        PhaseAnswer answer = passage(MICRO, guide("g", "1 mm")).reach("15 cm").over(wire).under(rules).in();
        assertEquals(FITS, answer.verdict());
        assertTrue(answer.hasCaution());
        assertTrue(codes(answer).containsAll(
                List.of(ReasonCode.EXCHANGE_WIRE_SHORT, ReasonCode.EXCHANGE_BY_EXTENSION)));
    }

    @Test
    void rapidExchangeNeedsNoLongWire() {
        TestRules rules = TestRules.exact().allow(Purpose.GRIP, "10 cm");
        PhaseAnswer answer = passage(balloon("b", "0.8 mm", "0.6 mm"), guide("g", "2 mm")).reach("15 cm")
                .over(rod("w", GUIDEWIRE, "190 cm", "0.3 mm")).under(rules).in();
        assertTrue(!codes(answer).contains(ReasonCode.EXCHANGE_WIRE_SHORT));
    }

    @Test
    void tipOfAnImagingCatheterMustComeFarther() {
        SampleDevice imaging = rod("i", IMAGING_CATHETER, "135 cm", "0.9 mm").parts(new Parts(Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.of(length("20 mm")), List.of(), Optional.empty()));
        PhaseAnswer answer = passage(imaging, guide("g", "1 mm")).reach("10 cm").in();
        assertEquals(length("8 cm"), chain(answer, LengthChain.Question.LANDING).margin());
        assertTrue(codes(answer).contains(ReasonCode.LANDING_OF_PLANE));
    }

    private static List<ReasonCode> codes(PhaseAnswer answer) {
        return answer.reasons().stream().map(Reason::code).toList();
    }

    private static LengthChain chain(PhaseAnswer answer, LengthChain.Question asked) {
        return answer.evidence().stream().filter(LengthChain.class::isInstance).map(LengthChain.class::cast)
                .filter(c -> c.question() == asked).findFirst().orElseThrow();
    }

    @Test
    void tubeOfAnExtensionInPlaceMustStayInTheGuideToo() {
        SampleDevice tube = device("x", GUIDE_EXTENSION).length("150 cm").section("tube", "0 cm", "25 cm", "1.7 mm")
                .section("push rod", "25 cm", "150 cm", "0.5 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.5 mm");
        TestRules rules = TestRules.exact().allow(Purpose.EXTENSION_OVERLAP, "10 cm");
        SampleQuestion question = passage(MICRO, guide("g", "2 mm")).under(rules);
        assertEquals(FITS, question.through(tube, "15 cm").in().verdict());
        PhaseAnswer little = question.through(tube, "20 cm").in();
        assertEquals(TIGHT, little.verdict());
        assertEquals(length("-5 cm"), chain(little, LengthChain.Question.OVERLAP).margin());
    }

    @Test
    void aPortThatIsNotStatedMattersOnlyWhereTheTipComesOut() {
        SampleDevice balloon = rod("b", BALLOON_CATHETER, "142 cm", "0.9 mm").sidePort("0 mm", "?");
        Lumen port = balloon.device().sidePort().orElseThrow();
        assertEquals(UNKNOWN, PortCheck.verdict(port, length("1 mm")));
        assertEquals(FITS, PortCheck.verdict(port, length("0 mm")));
        assertEquals(FITS, PortCheck.verdict(port, length("-5 cm")));
    }
}
