/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.IMAGING_CATHETER;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.device.DeviceKind.ROTATIONAL_BURR;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Reason.diameter;
import static org.ferrule.fit.verdict.Reason.distance;
import static org.ferrule.fit.verdict.Reason.name;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.ferrule.fit.sample.Texts;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** One device through one lumen, tip first, with exact figures: how far it goes and what stops it. */
class PassageTest {
    private static final Length NANOMETRE_THIRD = new Length(1);

    @Test
    void passesLumenWithRoom() {
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "135 cm", "2.6 Fr"), guide("g", "0.070 in")).in();
        assertEquals(FITS, answer.verdict());
        assertEquals(length("0.070 in").minus(length("2.6 Fr")), answer.clearance().get().nominal());
        assertEquals(length("35 cm"), answer.reach().get());
    }

    @Test
    void clearanceOfExactlyWhatIsRequiredFits() {
        assertEquals(FITS, passage(rod("m", MICROCATHETER, "135 cm", "1 mm"), guide("g", "1.025 mm")).in().verdict());
    }

    @Test
    void thirdOfNanometreLessThanRequiredIsTight() {
        String less = Texts.text(length("1.025 mm").minus(NANOMETRE_THIRD), LengthUnit.FRENCH);
        assertEquals(TIGHT, passage(rod("m", MICROCATHETER, "135 cm", "1 mm"), guide("g", less)).in().verdict());
    }

    @Test
    void lumenThatIsFilledExactlyIsTight() {
        assertEquals(TIGHT, passage(rod("m", MICROCATHETER, "135 cm", "1 mm"), guide("g", "1 mm")).in().verdict());
    }

    @Test
    void thirdOfNanometreTooThickIsBlocked() {
        String thick = Texts.text(length("1 mm").plus(NANOMETRE_THIRD), LengthUnit.FRENCH);
        assertEquals(BLOCKED, passage(rod("m", MICROCATHETER, "135 cm", thick), guide("g", "1 mm")).in().verdict());
    }

    @Test
    void saysHowFarItGoesAndWhatStopsIt() {
        SampleDevice thick = device("m", MICROCATHETER).length("135 cm")
                .section("distal shaft", "0 cm", "103.6 cm", "0.90 mm")
                .section("proximal shaft", "103.6 cm", "135 cm", "1.07 mm");
        PhaseAnswer answer = passage(thick, guide("g", "1.02 mm")).in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(stopsShort("31.4 cm", "proximal shaft", "1.07 mm", "1.02 mm"), answer.reasons().get(0));
        assertEquals(length("3.6 cm"), answer.reach().get());
        assertEquals(length("103.6 cm"), answer.limiting().get().deviceStation());
        assertEquals(Length.ZERO, answer.limiting().get().lumenStation());
    }

    @Test
    void shaftAndOwnWireAddUpBehindTheExitPort() {
        PhaseAnswer answer = passage(balloon("b", "0.85 mm", "0.69 mm"), guide("g", "1.20 mm")).in();
        assertEquals(length("1.20 mm").minus(length("0.69 mm")).minus(length("0.014 in")),
                answer.clearance().get().nominal());
        assertEquals("hypotube", answer.limiting().get().deviceSection());
        assertTrue(answer.reasons().contains(Reason.of(ReasonCode.OWN_WIRE_BESIDE, name("b"),
                diameter(length("0.014 in")))));
    }

    @Test
    void shaftAndOwnWireCanBlockWhereBothFitAlone() {
        PhaseAnswer answer = passage(balloon("b", "0.85 mm", "0.69 mm"), guide("g", "1.04 mm")).in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(length("25 cm").minus(length("100 cm")), answer.reach().get());
    }

    @Test
    void wireBesideCountsFromThePortWithinASection() {
        SampleDevice inSection = rod("i", IMAGING_CATHETER, "135 cm", "1.00 mm").takesWire("0.3 mm")
                .sidePort("16 mm", "0.4 mm");
        PhaseAnswer answer = passage(inSection, guide("g", "1.2 mm")).in();
        assertEquals(stopsShort("133.4 cm", "shaft", "1.30 mm", "1.2 mm"), answer.reasons().get(0));
    }

    @Test
    void exitPortAtTheTipPutsTheWireBesideAllOfIt() {
        SampleDevice outside = rod("i", IMAGING_CATHETER, "135 cm", "1.00 mm").takesWire("0.3 mm")
                .sidePort("0 mm", "0.4 mm");
        assertEquals(length("1.3 mm"),
                passage(outside, guide("g", "1.4 mm")).in().limiting().get().deviceDiameter().centre());
    }

    @Test
    void exitPortAtTheEndOfASectionLeavesThatSectionAlone() {
        assertEquals(FITS, passage(balloon("b", "0.85 mm", "0.59 mm"), guide("g", "1.00 mm")).in().verdict());
    }

    @Test
    void wireInHandReplacesTheStatedOne() {
        assertEquals(length("0.05 mm"), passage(balloon("b", "0.70 mm", "0.60 mm"), guide("g", "0.95 mm"))
                .wire("0.30 mm").in().clearance().get().nominal());
    }

    @Test
    void widePartDecidesWhereverItComes() {
        SampleDevice burr = device("b", ROTATIONAL_BURR).length("135 cm").section("burr", "0 mm", "6 mm", "1.25 mm")
                .section("drive coil", "6 mm", "70 mm", "0.86 mm")
                .section("drive sheath", "70 mm", "1350 mm", "4.3 Fr");
        assertEquals("drive sheath", passage(burr, guide("g", "0.060 in")).in().limiting().get().deviceSection());
    }

    @Test
    void narrowStretchIsReachedByTheTipAlone() {
        SampleDevice slim = device("m", MICROCATHETER).length("110 cm").section("tip", "0 cm", "15 cm", "0.6 mm")
                .section("shaft", "15 cm", "110 cm", "0.9 mm");
        assertEquals(FITS, passage(slim, narrowedDistally()).in().verdict());
    }

    @Test
    void narrowStretchStopsTheShaftThatComesThatFar() {
        SampleDevice thick = device("m", MICROCATHETER).length("110 cm").section("tip", "0 cm", "5 cm", "0.6 mm")
                .section("shaft", "5 cm", "110 cm", "0.9 mm");
        PhaseAnswer answer = passage(thick, narrowedDistally()).in();
        assertEquals(stopsShort("10 cm", "shaft", "0.9 mm", "bore 2", "0.7 mm"), answer.reasons().get(0));
        assertEquals(length("95 cm"), answer.limiting().get().lumenStation());
    }

    @Test
    void reachKeepsTheShaftOutOfTheNarrowStretch() {
        SampleDevice thick = device("m", MICROCATHETER).length("110 cm").section("tip", "0 cm", "5 cm", "0.6 mm")
                .section("shaft", "5 cm", "110 cm", "0.9 mm");
        assertEquals(FITS, passage(thick, narrowedDistally()).reach("0 cm").in().verdict());
        assertEquals(BLOCKED, passage(thick, narrowedDistally()).reach("1 mm").in().verdict());
    }

    private static SampleDevice narrowedDistally() {
        return device("g", GUIDE_EXTENSION).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 cm", "100 cm")
                .bore("0 cm", "95 cm", "1.2 mm").bore("95 cm", "100 cm", "0.7 mm");
    }

    @Test
    void partsThatStayOutsideDoNotMatter() {
        SampleDevice hub = device("m", MICROCATHETER).length("135 cm").section("shaft", "0 cm", "120 cm", "0.9 mm")
                .section("strain relief", "120 cm", "135 cm", "3 mm");
        assertEquals(BLOCKED, passage(hub, guide("g", "0.070 in")).in().verdict());
        assertEquals(FITS, passage(hub, guide("g", "0.070 in")).reach("20 cm").in().verdict());
    }

    @Test
    void reachBeyondTheOuterTipCountsFromATipThatIsAheadOfTheLumen() {
        SampleDevice outer = device("d", MICROCATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "1 cm", "100 cm").bore("0 cm", "99 cm", "1 mm");
        SampleDevice inner = device("m", MICROCATHETER).length("135 cm").section("shaft", "0 cm", "110 cm", "0.9 mm")
                .section("hub", "110 cm", "135 cm", "2 mm");
        assertEquals(FITS, passage(inner, outer).reach("10 cm").in().verdict());
        assertEquals(BLOCKED, passage(inner, outer).reach("10.001 cm").in().verdict());
        assertEquals(length("10 cm"), passage(inner, outer).reach("10 cm").in().reach().get());
    }

    @Test
    void deviceThatIsShorterThanTheLumenStaysInside() {
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "40 cm", "0.9 mm"), guide("g", "1 mm")).in();
        assertEquals(FITS, answer.verdict());
        assertEquals(length("-60 cm"), answer.reach().get());
    }

    @Test
    void lumenOfAnotherDeviceIsRefusedByName() {
        RuleSet rules = TestRules.exact().rules();
        Device guide = guide("g", "1 mm").device();
        ReadDevice inner = ReadDevice.of(rod("m", MICROCATHETER, "1 m", "0.9 mm").device(), rules);
        Lumen strange = guide("x", "2 mm").device().lumens().get(0);
        Exception refused = assertThrows(IllegalArgumentException.class, () -> new FitQuestion(
                ReadDevice.of(guide, rules), strange, inner, Direction.TIP_FIRST, Optional.empty(), rules));
        assertTrue(refused.getMessage().contains("\"g\"") && refused.getMessage().contains("\"lumen\""));
    }

    private static Reason stopsShort(String by, String section, String od, String id) {
        return stopsShort(by, section, od, "bore 1", id);
    }

    private static Reason stopsShort(String by, String section, String od, String bore, String id) {
        return Reason.of(ReasonCode.STOPS_SHORT, distance(length(by)), name(section), diameter(length(od)),
                name(bore), diameter(length(id)));
    }
}
