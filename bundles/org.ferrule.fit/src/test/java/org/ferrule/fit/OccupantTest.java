/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.device.DeviceKind.OTHER;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.ferrule.fit.verdict.Verdict.UNKNOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.sample.Texts;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.geometry.Body;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.Packing;
import org.ferrule.geometry.Stadium;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** Devices that lie still in the lumen while another one passes. */
class OccupantTest {

    @Test
    void offsetsDecideWhichSectionsMeet() {
        // Two balloons of 0.95 mm on shafts of 0.8 mm: side by side 1.9 mm, staggered 1.75 mm.
        SampleDevice still = balloon("still", "0.95 mm", "0.6 mm");
        assertEquals(BLOCKED, beside(still, "0 cm", "0.070 in").reach("-1 cm").in().verdict());
        assertEquals(FITS, beside(still, "10 cm", "0.070 in").reach("-1 cm").in().verdict());
    }

    @Test
    void deviceThatPassesMustGetByTheThickPartsOfTheOther() {
        // With the other balloon inside the lumen, the moving one's hypotube or shaft lies beside it: 0.95 and 0.8 mm.
        PhaseAnswer answer = beside(balloon("still", "0.95 mm", "0.6 mm"), "-10 cm", "0.070 in").in();
        assertEquals(BLOCKED, answer.verdict());
        // The tip of the other lies 90 cm from the hub, its balloon from 87.7 to 89.6 cm.
        assertEquals(length("87.7 cm"), answer.limiting().get().lumenStation());
        assertEquals("balloon", answer.limiting().get().deviceSection());
    }

    private static SampleQuestion beside(SampleDevice still, String ahead, String lumen) {
        return passage(balloon("b", "0.95 mm", "0.6 mm").takesWire("0.3 mm"), guide("g", lumen))
                .beside(still.takesWire("0.3 mm"), ahead);
    }

    @Test
    void ownWiresOfBothLieBesideTheirShafts() {
        // Proximal to both ports: hypotube 0.6, wire 0.3, hypotube 0.6, wire 0.3 mm; distal to one port three discs.
        SampleDevice still = balloon("still", "0.5 mm", "0.6 mm").takesWire("0.3 mm");
        Limiting limiting = passage(balloon("b", "0.5 mm", "0.6 mm").takesWire("0.3 mm"), guide("g", "1.65 mm"))
                .beside(still, "5 cm").in().limiting().get();
        assertEquals("distal shaft", limiting.deviceSection());
        assertEquals(length("1.6 mm"), limiting.deviceDiameter().centre());
    }

    @Test
    void wireOfAnOverTheWireOccupantIsInsideIt() {
        SampleDevice micro = rod("micro", MICROCATHETER, "135 cm", "0.9 mm").takesWire("0.3 mm").overTheWire("135 cm",
                "0.4 mm");
        assertEquals(length("1.7 mm"), needed(micro));
    }

    @Test
    void wireIsADisc() {
        assertEquals(length("1.1 mm"), needed(rod("wire", GUIDEWIRE, "190 cm", "0.3 mm")));
    }

    private static Length needed(SampleDevice still) {
        return passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm"), guide("g", "2 mm")).beside(still, "10 cm").in()
                .limiting().get().deviceDiameter().centre();
    }

    @Test
    void twoEqualShaftsHideAThirdOfTwoThirds() {
        // Descartes' circle theorem: the radii 1, 1 and 2/3 need no more than 1 and 1 (reference, 1.3).
        SampleQuestion two = passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm"), guide("g", "1.85 mm"))
                .beside(rod("a", OTHER, "135 cm", "0.9 mm"), "10 cm");
        assertEquals(length("0.05 mm"), two.in().clearance().get().nominal());
        assertEquals(length("0.05 mm"),
                two.beside(rod("c", OTHER, "135 cm", "0.6 mm"), "10 cm").in().clearance().get().nominal());
    }

    @Test
    void stopIsToldFromTheTip() {
        // The other ends 30 cm before the opening; beside it 0.9 + 0.9 mm do not find room from the hub on.
        PhaseAnswer answer = passage(device("m", MICROCATHETER).length("135 cm")
                .section("tip", "0 cm", "2 cm", "0.5 mm").section("shaft", "2 cm", "135 cm", "0.9 mm"),
                guide("g", "1.7 mm")).beside(rod("a", OTHER, "135 cm", "0.9 mm"), "-30 cm").in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(length("-98 cm"), answer.reach().get());
        assertEquals(Length.ZERO, answer.limiting().get().lumenStation());
    }

    @Test
    void taperBesideAnotherStopsWhereBothFillTheLumen() {
        SampleDevice cone = device("m", MICROCATHETER).length("135 cm").taper("cone", "0 cm", "100 cm", "0.5 mm",
                "1.5 mm").section("shaft", "100 cm", "135 cm", "0.5 mm");
        PhaseAnswer answer = passage(cone, guide("g", "2 mm")).beside(rod("a", OTHER, "135 cm", "1 mm"), "10 cm").in();
        // 0.5 mm + s / 100 cm * 1 mm + 1 mm = 2 mm
        assertEquals(50, answer.limiting().get().deviceStation().mm() / 10, 1e-4);
    }

    @Test
    void taperOfTheOtherCountsWhereItLies() {
        SampleDevice cone = device("a", OTHER).length("100 cm").taper("cone", "0 cm", "100 cm", "0.2 mm", "1.2 mm");
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "50 cm", "0.8 mm"), guide("g", "2.5 mm"))
                .beside(cone, "0 cm")
                .in();
        assertEquals(length("0.5 mm"), answer.clearance().get().nominal());
        assertEquals(Length.ZERO, answer.limiting().get().lumenStation());
    }

    @Test
    void missingFigureOfAnOccupantIsUnknown() {
        SampleQuestion question = passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm"), guide("g", "2 mm"));
        assertEquals(UNKNOWN, question.beside(rod("a", OTHER, "135 cm", "?"), "10 cm").in().verdict());
    }

    @Test
    void missingFigureWhereNothingPassesDoesNotMatter() {
        SampleDevice still = device("a", OTHER).length("135 cm").section("tip", "0 cm", "10 cm", "?").section("shaft",
                "10 cm", "135 cm", "0.5 mm");
        SampleDevice micro = rod("m", MICROCATHETER, "135 cm", "0.8 mm");
        assertEquals(FITS, passage(micro, guide("g", "2 mm")).beside(still, "10 cm").in().verdict());
        assertEquals(UNKNOWN, passage(micro, guide("g", "2 mm")).beside(still, "9 cm").in().verdict());
        assertEquals(FITS, passage(micro, guide("g", "2 mm")).beside(still, "0 cm").reach("-11 cm").in().verdict());
    }

    @Test
    void occupantOfUnstatedWireIsUnknownProximalToItsPort() {
        SampleDevice still = balloon("a", "0.8 mm", "0.6 mm").takesWire("?");
        SampleDevice micro = rod("m", MICROCATHETER, "135 cm", "0.8 mm");
        assertEquals(UNKNOWN, passage(micro, guide("g", "2 mm")).beside(still, "10 cm").in().verdict());
        assertEquals(BLOCKED, passage(micro, guide("g", "1.35 mm")).beside(still, "10 cm").in().verdict());
    }

    @Test
    void whatIsKnownBlocksWhateverIsMissing() {
        SampleQuestion question = passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm"), guide("g", "1.5 mm"))
                .beside(rod("a", OTHER, "135 cm", "?"), "10 cm");
        assertEquals(UNKNOWN, question.in().verdict());
        assertEquals(BLOCKED, question.beside(rod("c", OTHER, "135 cm", "0.8 mm"), "10 cm").in().verdict());
    }

    @Test
    void othersThatFillTheLumenBlockADeviceOfUnknownDiameter() {
        SampleQuestion question = passage(rod("m", MICROCATHETER, "135 cm", "?"), guide("g", "1.5 mm"))
                .beside(rod("a", OTHER, "135 cm", "0.8 mm"), "10 cm");
        assertEquals(UNKNOWN, question.in().verdict());
        assertEquals(BLOCKED, question.beside(rod("c", OTHER, "135 cm", "0.8 mm"), "10 cm").in().verdict());
    }

    @Test
    void occupantBeyondItsLengthIsUnknown() {
        SampleDevice micro = rod("m", MICROCATHETER, "135 cm", "0.8 mm");
        assertEquals(UNKNOWN, passage(micro, guide("g", "2 mm")).beside(rod("a", OTHER, "80 cm", "0.5 mm"), "0 cm").in()
                .verdict());
    }

    @Test
    void lumenOfUnknownLengthHidesWhereOthersLie() {
        SampleDevice open = device("g", OTHER).lumen("lumen", Lumen.Use.WORKING,
                Lumen.Opening.HUB, "0 cm", "0 cm").bore("0 cm", "10 cm", "2 mm");
        SampleDevice still = rod("a", OTHER, "80 cm", "0.5 mm");
        assertEquals(UNKNOWN, passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm"), open).beside(still, "0 cm").in()
                .verdict());
        assertEquals(BLOCKED, passage(rod("m", MICROCATHETER, "135 cm", "2.1 mm"), open).beside(still, "0 cm").in()
                .verdict());
    }

    @Test
    void eachLaneIsAddedUp() {
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm ±0.01"), guide("g", "1.75 mm ±0.02"))
                .beside(rod("a", OTHER, "135 cm", "0.9 mm ±0.03"), "10 cm").in();
        assertEquals(TIGHT, answer.verdict());
        assertEquals(length("-0.01 mm"), answer.clearance().get().worst());
        assertEquals(length("0.05 mm"), answer.clearance().get().nominal());
        assertEquals(length("0.11 mm"), answer.clearance().get().best());
    }

    @Test
    void assumedCentreOfAnOccupantBlocksWithItsLowerEndOnly() {
        TestRules rules = TestRules.exact().spans("0.05 mm", "0.05 mm");
        SampleDevice still = rod("a", OTHER, "135 cm", "0.9 mm max");
        SampleDevice micro = rod("m", MICROCATHETER, "135 cm", "0.8 mm");
        assertEquals(TIGHT, passage(micro, guide("g", "1.601 mm")).beside(still, "10 cm").under(rules).in().verdict());
        assertEquals(BLOCKED,
                passage(micro, guide("g", "1.599 mm")).beside(still, "10 cm").under(rules).in().verdict());
    }

    @Test
    void comingOutEveryOutlineIsThatAfterUse() {
        SampleDevice still = device("a", BALLOON_CATHETER).length("135 cm").folded("balloon", "0 cm", "50 cm", "0.8 mm",
                "1 mm").section("shaft", "50 cm", "135 cm", "0.5 mm");
        SampleQuestion question = passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm"), guide("g", "1.7 mm"));
        assertEquals(FITS, question.beside(still, "0 cm").in().verdict());
        assertEquals(BLOCKED, question.out().verdict());
    }

    @Test
    void usedOccupantHasThatOutlineGoingInToo() {
        SampleDevice still = device("a", BALLOON_CATHETER).length("135 cm").folded("balloon", "0 cm", "50 cm", "0.8 mm",
                "1 mm").section("shaft", "50 cm", "135 cm", "0.5 mm");
        assertEquals(BLOCKED, passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm"), guide("g", "1.7 mm"))
                .besideUsed(still, "0 cm").in().verdict());
    }

    @Test
    void inflatedDeviceGoesInWithItsOutlineAfterUse() {
        SampleDevice balloon = device("b", BALLOON_CATHETER).length("135 cm")
                .folded("balloon", "0 cm", "2 cm", "0.8 mm", "1.1 mm").section("shaft", "2 cm", "135 cm", "0.5 mm");
        assertEquals(FITS, passage(balloon, guide("g", "1 mm")).in().verdict());
        assertEquals(BLOCKED, passage(balloon, guide("g", "1 mm")).afterInflation().in().verdict());
    }

    @Test
    void ovalBesideARoundShaftLiesOnItsFlat() {
        SampleDevice oval = device("d", OTHER).length("140 cm").oval("shaft", "0 cm", "140 cm", "1.1 mm", "0.3 mm");
        assertEquals(length("0.1 mm"), passage(rod("m", MICROCATHETER, "135 cm", "0.4 mm"), guide("g", "1.2 mm"))
                .beside(oval, "10 cm").in().clearance().get().nominal());
    }

    @Test
    void betweenWhatIsProvedAndTheBestPlacesFoundItIsTight() {
        Body oval = new Stadium(length("1.1 mm"), length("0.8 mm"));
        Enclosure two = Packing.of(List.of(oval, oval));
        Length between = two.lowerDiameter().plus(two.gap().dividedBy(2));
        PhaseAnswer answer = twoOvals(between);
        assertEquals(TIGHT, answer.verdict());
        assertTrue(answer.reasons().stream().anyMatch(r -> r.code() == ReasonCode.NOT_PROVED));
        assertEquals(BLOCKED, twoOvals(two.lowerDiameter().minus(length("0.001 mm"))).verdict());
        assertEquals(TIGHT, twoOvals(two.upperDiameter()).verdict());
        assertEquals(FITS, twoOvals(two.upperDiameter().plus(length("0.025 mm"))).verdict());
    }

    private static PhaseAnswer twoOvals(Length lumen) {
        SampleDevice oval = device("o", OTHER).length("135 cm").oval("shaft", "0 cm", "135 cm", "1.1 mm", "0.8 mm");
        String printed = Texts.text(lumen, LengthUnit.FRENCH);
        return passage(oval, guide("g", printed)).beside(oval, "10 cm").in();
    }

    @Test
    void nineDevicesStillHaveAnAnswer() {
        SampleQuestion question = passage(rod("m", MICROCATHETER, "135 cm", "0.3 mm"), guide("g", "3 mm"));
        for (int i = 0; i < 9; i++) {
            question.beside(rod("w" + i, GUIDEWIRE, "190 cm", "0.3 mm"), "10 cm");
        }
        assertEquals(FITS, question.in().verdict());
        assertEquals(BLOCKED, question.beside(rod("a", OTHER, "190 cm", "2.8 mm"), "10 cm").in().verdict());
    }

    @Test
    void overTheTailOfAWireNothingElseIsAsked() {
        SampleDevice micro = rod("m", MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm", "0.4 mm");
        SampleQuestion question = passage(rod("w", GUIDEWIRE, "190 cm", "0.3 mm"), micro).overTail()
                .beside(rod("a", GUIDEWIRE, "190 cm", "0.05 mm"), "10 cm");
        assertThrows(IllegalArgumentException.class, question::question);
    }
}
