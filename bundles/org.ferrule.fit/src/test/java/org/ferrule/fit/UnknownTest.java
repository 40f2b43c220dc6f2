/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleClaim.minimumLumen;
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
import static org.ferrule.fit.verdict.Verdict.UNKNOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.junit.jupiter.api.Test;

/** What nobody states: it is never taken to fit, and matters only where it could change the answer. */
class UnknownTest {

    @Test
    void missingProfileIsUnknown() {
        PhaseAnswer answer = passage(partly("?", "0.9 mm"), guide("g", "1 mm")).in();
        assertEquals(UNKNOWN, answer.verdict());
        assertEquals(Reason.of(ReasonCode.MISSING_FIGURE, name("m"), name("outer diameter"), name("tip")),
                answer.reasons().get(0));
        assertEquals(Optional.empty(), answer.reach());
    }

    @Test
    void unreadableProfileIsUnknown() {
        PhaseAnswer answer = passage(partly("0,5 mm", "0.9 mm"), guide("g", "1 mm")).in();
        assertEquals(UNKNOWN, answer.verdict());
        assertEquals(Reason.of(ReasonCode.UNREADABLE_FIGURE, name("m"), name("0,5 mm"), name("tip")),
                answer.reasons().get(0));
    }

    /** Where the wire leaves the shaft, and so how long it lies beside it, decides. */
    @Test
    void sidePortAtAnUnknownPlaceIsUnknown() {
        Device known = partly("0.9 mm", "0.9 mm").takesWire("0.014 in").sidePort("20 mm", "0.4 mm").device();
        Lumen lumen = known.lumens().get(0);
        Lumen unstated = new Lumen(lumen.name(), lumen.use(), lumen.opening(), lumen.distalAt(),
                known.statedLength().orElseThrow(), false, lumen.sections());
        Device device = new Device(known.id(), known.name(), known.kind(), known.size(), known.effectiveLength(),
                known.takesWire(), known.sections(), List.of(unstated), known.deploys(), known.claims());
        RuleSet rules = TestRules.exact().rules();
        Device guide = guide("g", "1 mm").device();
        PhaseAnswer answer = FitSolver.standard(List.of()).answer(new FitQuestion(ReadDevice.of(guide, rules),
                guide.mainLumen().orElseThrow(), ReadDevice.of(device, rules), Direction.TIP_FIRST, Optional.empty(),
                rules)).in();
        assertEquals(UNKNOWN, answer.verdict());
        assertEquals(Reason.of(ReasonCode.PORT_NOT_STATED, name("m")), answer.reasons().get(0));
    }

    @Test
    void knownBlockBeatsUnknown() {
        assertEquals(BLOCKED, passage(partly("?", "1.1 mm"), guide("g", "1 mm")).in().verdict());
        assertEquals(BLOCKED, passage(partly("1.1 mm", "?"), guide("g", "1 mm")).in().verdict());
    }

    @Test
    void unknownSectionBeyondTheReachDoesNotMatter() {
        assertEquals(FITS, passage(partly("0.9 mm", "?"), guide("g", "1 mm")).reach("10 cm").in().verdict());
        assertEquals(UNKNOWN, passage(partly("0.9 mm", "?"), guide("g", "1 mm")).reach("20.1 cm").in().verdict());
    }

    @Test
    void unknownDistalLumenMattersOnlyToWhatComesThatFar() {
        SampleDevice guide = device("g", GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 cm", "100 cm").bore("0 cm", "90 cm", "1 mm")
                .bore("90 cm", "100 cm", "?");
        SampleDevice rod = rod("m", MICROCATHETER, "135 cm", "0.9 mm");
        assertEquals(UNKNOWN, passage(rod, guide).in().verdict());
        assertEquals(FITS, passage(rod, guide).reach("-10 cm").in().verdict());
    }

    @Test
    void stretchThatNoSectionCoversIsUnknown() {
        SampleDevice gap = device("m", MICROCATHETER).length("135 cm").section("tip", "0 cm", "20 cm", "0.8 mm")
                .section("shaft", "30 cm", "135 cm", "0.9 mm");
        PhaseAnswer answer = passage(gap, guide("g", "1 mm")).in();
        assertEquals(UNKNOWN, answer.verdict());
        assertEquals(Reason.of(ReasonCode.UNCOVERED_STRETCH, name("m"), distance(length("20 cm")),
                distance(length("30 cm"))), answer.reasons().get(0));
    }

    @Test
    void stretchUpToTheEffectiveLengthIsUnknownWhereNoSectionReaches() {
        SampleDevice tipOnly = device("m", MICROCATHETER).length("135 cm").section("tip", "0 cm", "20 cm", "0.8 mm");
        assertEquals(UNKNOWN, passage(tipOnly, guide("g", "1 mm")).in().verdict());
    }

    @Test
    void lumenWithoutAnySectionIsUnknown() {
        SampleDevice bare = device("g", GUIDE_CATHETER).length("100 cm").lumen("lumen", Lumen.Use.WORKING,
                Lumen.Opening.HUB, "0 cm", "100 cm");
        assertEquals(UNKNOWN, passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm"), bare).in().verdict());
    }

    @Test
    void lumenWithoutLengthAndSectionsIsUnknown() {
        SampleDevice bare = device("g", GUIDE_CATHETER).lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 cm",
                "0 cm");
        assertEquals(UNKNOWN, passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm"), bare).in().verdict());
    }

    @Test
    void gapInALumenIsUnknown() {
        SampleDevice gap = device("g", GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 cm", "100 cm").bore("0 cm", "40 cm", "1 mm")
                .bore("50 cm", "100 cm", "1 mm");
        assertEquals(UNKNOWN, passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm"), gap).in().verdict());
    }

    @Test
    void rapidExchangeDeviceWithoutAStatedWireIsUnknownBehindItsPort() {
        SampleDevice noWire = balloon("b", "0.85 mm", "0.69 mm").takesWire("?");
        PhaseAnswer answer = passage(noWire, guide("g", "0.070 in")).in();
        assertEquals(UNKNOWN, answer.verdict());
        assertEquals(Reason.of(ReasonCode.OWN_WIRE_NOT_STATED, name("b")), answer.reasons().get(0));
        assertEquals(FITS, passage(noWire, guide("g", "0.070 in")).wire("0.014 in").in().verdict());
    }

    @Test
    void deviceOfUnknownLengthIsUnknownHubToHub() {
        SampleDevice tipOnly = device("m", MICROCATHETER).section("tip", "0 cm", "20 cm", "0.8 mm");
        PhaseAnswer answer = passage(tipOnly, guide("g", "1 mm")).in();
        assertEquals(UNKNOWN, answer.verdict());
        assertEquals(Reason.of(ReasonCode.LENGTH_NOT_STATED, name("m")), answer.reasons().get(0));
    }

    @Test
    void deviceOfUnknownLengthIsKnownAsFarAsItsSectionsGo() {
        SampleDevice described = device("m", MICROCATHETER).section("shaft", "0 cm", "120 cm", "0.8 mm");
        assertEquals(FITS, passage(described, guide("g", "1 mm")).reach("20 cm").in().verdict());
        assertEquals(UNKNOWN, passage(described, guide("g", "1 mm")).reach("20.1 cm").in().verdict());
        assertEquals(UNKNOWN, passage(described, guide("g", "1 mm")).reach("20.1 cm").in().geometry());
    }

    @Test
    void deviceOfUnknownLengthCanBeKnownNotToPass() {
        SampleDevice thick = device("m", MICROCATHETER).section("tip", "0 cm", "20 cm", "1.1 mm");
        assertEquals(BLOCKED, passage(thick, guide("g", "1 mm")).in().verdict());
    }

    @Test
    void deviceWithNothingButALabelIsUnknown() {
        SampleDevice bare = device("b", BALLOON_CATHETER).length("142 cm");
        PhaseAnswer answer = passage(bare, guide("g", "0.070 in")).in();
        assertEquals(UNKNOWN, answer.verdict());
        assertEquals(ReasonCode.UNCOVERED_STRETCH, answer.reasons().get(0).code());
    }

    @Test
    void deviceWithNothingAtAllIsUnknown() {
        assertEquals(UNKNOWN, passage(device("b", BALLOON_CATHETER), guide("g", "0.070 in")).in().verdict());
    }

    @Test
    void claimDecidesForADeviceWithNothingButALabel() {
        SampleDevice bare = device("b", BALLOON_CATHETER).claim(minimumLumen("0.070 in").kinds(GUIDE_CATHETER));
        PhaseAnswer answer = passage(bare, guide("g", "0.070 in")).in();
        assertEquals(FITS, answer.verdict());
        assertEquals(Authority.CLAIM, answer.authority());
        assertEquals(UNKNOWN, answer.geometry());
        assertTrue(answer.clearance().isEmpty() && answer.limiting().isEmpty() && answer.reach().isEmpty());
    }

    private static SampleDevice partly(String tip, String shaft) {
        return device("m", MICROCATHETER).length("135 cm").section("tip", "0 cm", "120 cm", tip).section("shaft",
                "120 cm", "135 cm", shaft);
    }
}
