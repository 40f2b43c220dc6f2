/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.DUAL_LUMEN_MICROCATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.member;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.ferrule.fit.verdict.Verdict.UNKNOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** Outlines that are not plain: ovals, bundles, and sections that do not lie as they should. */
class OutlineTest {

    @Test
    void ovalNeedsItsWidth() {
        assertEquals(length("0.1 mm"), nominal(oval("1.1 mm", "0.8 mm"), "1.2 mm"));
    }

    @Test
    void wireBesideAnOvalHidesOnItsFlat() {
        // Distance of the round ends 1.1 - 0.3 = 0.8 mm, at least twice the wire: the circle round the oval has room.
        assertEquals(length("0.1 mm"), nominal(oval("1.1 mm", "0.3 mm").takesWire("0.4 mm").sidePort("0 mm", "0.5 mm"),
                "1.2 mm"));
    }

    @Test
    void wireBesideAThickOvalNeedsMore() {
        // q + h + s^2 / 4q with q 0.3, h 0.8, s 0.3 mm
        assertEquals(length("0.025 mm"), nominal(oval("1.1 mm", "0.8 mm").takesWire("0.3 mm").sidePort("0 mm",
                "0.4 mm"), "1.2 mm"));
    }

    @Test
    void ovalThatIsAlmostRoundMayLieEitherWay() {
        SampleDevice almostRound = oval("1.00 mm ±0.05", "0.98 mm ±0.01");
        assertEquals(length("0.97 mm"), passage(almostRound, guide("g", "1.2 mm")).in().limiting().get()
                .deviceDiameter().low());
        assertEquals(length("0.1 mm"), nominal(oval("0.8 mm", "1.1 mm"), "1.2 mm"));
    }

    @Test
    void ovalOfWhichOneMeasureMayBeNothingIsStillAnOval() {
        SampleDevice flat = oval("1.1 mm", "0.01 mm").takesWire("0.3 mm").sidePort("0 mm", "0.4 mm");
        assertEquals(TIGHT, passage(flat, guide("g", "1.15 mm")).under(TestRules.exact().spans("0.02 mm", "0.02 mm"))
                .in().verdict());
    }

    @Test
    void bundleNeedsItsEnclosingCircle() {
        SampleDevice pair = bundle(member("-0.4 mm", "0 mm", "0.8 mm"), member("0.3 mm", "0 mm", "0.6 mm"));
        assertEquals(length("0.1 mm"), nominal(pair, "1.5 mm"));
    }

    @Test
    void bundleOfThreeEqualDiscsNeedsTheKnownCircle() {
        // Three equal discs in contact: 1 + 2 / sqrt(3) times their diameter (reference: circle packing, n = 3).
        SampleDevice three = bundle(member("0 mm", "0 mm", "1 mm"), member("1 mm", "0 mm", "1 mm"),
                member("0.5 mm", "0.866025404 mm", "1 mm"));
        assertEquals(2.154701, passage(three, guide("g", "3 mm")).in().limiting().get().deviceDiameter().centre().mm(),
                2e-6);
    }

    @Test
    void wireBesideABundleLiesInItsNook() {
        // Two equal discs hide a third of up to two thirds of their diameter (Descartes' circle theorem).
        SampleDevice pair = bundle(member("-0.45 mm", "0 mm", "0.9 mm"), member("0.45 mm", "0 mm", "0.9 mm"))
                .takesWire("0.599 mm").sidePort("0 mm", "0.7 mm");
        assertEquals(1.8, passage(pair, guide("g", "3 mm")).in().limiting().get().deviceDiameter().centre().mm(),
                2e-6);
    }

    @Test
    void wireBesideABundleThatDoesNotHideItNeedsMore() {
        SampleDevice pair = bundle(member("-0.45 mm", "0 mm", "0.9 mm"), member("0.45 mm", "0 mm", "0.9 mm"))
                .takesWire("0.9 mm").sidePort("0 mm", "1 mm");
        assertEquals(0.9 * 2.154701,
                passage(pair, guide("g", "3 mm")).in().limiting().get().deviceDiameter().centre().mm(), 2e-6);
    }

    @Test
    void bundleBlocksAndFitsLikeARoundShaft() {
        SampleDevice pair = bundle(member("-0.4 mm", "0 mm", "0.8 mm"), member("0.4 mm", "0 mm", "0.8 mm"));
        assertEquals(FITS, passage(pair, guide("g", "1.626 mm")).in().verdict());
        assertEquals(TIGHT, passage(pair, guide("g", "1.601 mm")).in().verdict());
        assertEquals(BLOCKED, passage(pair, guide("g", "1.599 mm")).in().verdict());
    }

    @Test
    void bundleHasThreeLanes() {
        SampleDevice pair = bundle(member("-0.4 mm", "0 mm", "0.8 mm ±0.01"), member("0.4 mm", "0 mm", "0.8 mm ±0.01"));
        assertEquals(0.01, passage(pair, guide("g", "2 mm")).in().limiting().get().deviceDiameter().high().mm() - 1.6,
                2e-6);
        assertEquals(-0.01, passage(pair, guide("g", "2 mm")).in().limiting().get().deviceDiameter().low().mm() - 1.6,
                2e-6);
    }

    @Test
    void memberThatCannotBeReadIsUnknown() {
        SampleDevice pair = bundle(member("0 mm", "0 mm", "0.8 mm"), member("0.8 mm", "0 mm", "0,8 mm"));
        assertEquals(UNKNOWN, passage(pair, guide("g", "2 mm")).in().verdict());
    }

    @Test
    void straightLineBetweenUnlikeOvalsProvesNoOverlap() {
        SampleDevice changing = device("d", DUAL_LUMEN_MICROCATHETER).length("140 cm").takesWire("0.3 mm")
                .contour("shaft", "0 cm", "140 cm", ovalContour("0.9 mm", "0.5 mm"), ovalContour("1.1 mm", "0.8 mm"))
                .sidePort("0 mm", "0.4 mm");
        PhaseAnswer answer = passage(changing, guide("g", "1.15 mm")).in();
        assertEquals(TIGHT, answer.verdict());
        assertTrue(answer.reasons().stream().anyMatch(r -> r.code() == ReasonCode.NOT_PROVED));
    }

    @Test
    void overlapThatIsNotProvedHidesNoBlock() {
        SampleDevice changing = device("d", DUAL_LUMEN_MICROCATHETER).length("140 cm")
                .contour("tip", "0 cm", "10 cm", ovalContour("1 mm", "0.5 mm"), ovalContour("1.2 mm", "0.8 mm"))
                .section("shaft", "10 cm", "140 cm", "1.2 mm");
        assertEquals(BLOCKED, passage(changing, guide("g", "1.1 mm")).in().verdict());
    }

    @Test
    void overlapThatIsNotProvedHidesNoUnknown() {
        SampleDevice changing = device("d", DUAL_LUMEN_MICROCATHETER).length("140 cm")
                .contour("tip", "0 cm", "10 cm", ovalContour("1 mm", "0.5 mm"), ovalContour("1.2 mm", "0.8 mm"))
                .section("shaft", "10 cm", "140 cm", "?");
        assertEquals(UNKNOWN, passage(changing, guide("g", "1.1 mm")).in().verdict());
    }

    @Test
    void overlappingSectionsCountTheLargest() {
        SampleDevice twice = device("m", MICROCATHETER).length("135 cm").section("all", "0 cm", "135 cm", "0.8 mm")
                .section("marker", "10 cm", "10.2 cm", "0.95 mm");
        PhaseAnswer answer = passage(twice, guide("g", "1 mm")).in();
        assertEquals(FITS, answer.verdict());
        assertEquals("marker", answer.limiting().get().deviceSection());
    }

    @Test
    void sectionsInAnyOrderAreTheSame() {
        SampleDevice mixed = device("m", MICROCATHETER).length("135 cm").section("shaft", "20 cm", "135 cm", "0.9 mm")
                .section("tip", "0 cm", "20 cm", "0.8 mm");
        assertEquals(FITS, passage(mixed, guide("g", "1 mm")).in().verdict());
    }

    @Test
    void sectionWithoutLengthCounts() {
        SampleDevice ring = rod("m", MICROCATHETER, "135 cm", "0.8 mm").section("ring", "10 cm", "10 cm", "1.1 mm");
        PhaseAnswer answer = passage(ring, guide("g", "1 mm")).in();
        assertEquals(BLOCKED, answer.verdict());
        assertEquals(length("-90 cm"), answer.reach().get());
    }

    @Test
    void wideEndOfATaperWithoutLengthCounts() {
        SampleDevice step = rod("m", MICROCATHETER, "135 cm", "0.8 mm").taper("step", "10 cm", "10 cm", "0.8 mm",
                "1.1 mm");
        assertEquals(BLOCKED, passage(step, guide("g", "1 mm")).in().verdict());
    }

    @Test
    void narrowEndOfABoreWithoutLengthCounts() {
        SampleDevice step = guide("g", "1 mm").taperedBore("50 cm", "50 cm", "1 mm", "0.7 mm");
        assertEquals(BLOCKED, passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm"), step).in().verdict());
    }

    @Test
    void overlappingBoresCountTheSmallest() {
        SampleDevice ridge = guide("g", "1 mm").bore("49 cm", "49.5 cm", "0.85 mm");
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm"), ridge).in();
        assertEquals(FITS, answer.verdict());
        assertEquals(length("0.05 mm"), answer.clearance().get().nominal());
    }

    @Test
    void sectionBeyondTheEffectiveLengthIsNeverInserted() {
        SampleDevice hub = device("m", MICROCATHETER).length("135 cm").section("shaft", "0 cm", "135 cm", "0.8 mm")
                .section("hub", "135 cm", "138 cm", "6 mm");
        assertEquals(FITS, passage(hub, guide("g", "1 mm")).in().verdict());
    }

    @Test
    void wireEndsAtItsEffectiveLength() {
        SampleDevice torque = device("w", GUIDEWIRE).length("190 cm").section("shaft", "0 cm", "190 cm", "0.3 mm")
                .section("torque grip", "190 cm", "195 cm", "6 mm");
        SampleDevice micro = rod("m", MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm", "0.4 mm");
        assertEquals(FITS, passage(torque, micro).overTail().in().verdict());
    }

    @Test
    void boreBeyondTheEndOfItsLumenIsNotThere() {
        SampleDevice longer = device("g", GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 cm", "100 cm").bore("0 cm", "100 cm", "1 mm")
                .bore("100 cm", "110 cm", "0.5 mm");
        assertEquals(FITS, passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm"), longer).in().verdict());
    }

    @Test
    void boreBeyondTheEndOfItsLumenLiesNotAheadOfATail() {
        SampleDevice micro = rod("m", MICROCATHETER, "135 cm", "0.9 mm")
                .lumen("wire", Lumen.Use.WIRE, Lumen.Opening.HUB, "0 cm", "135 cm").bore("0 cm", "145 cm", "0.3 mm");
        SampleDevice wire = device("w", GUIDEWIRE).length("330 cm").section("spring tip", "0 mm", "30 mm", "0.35 mm")
                .section("shaft", "30 mm", "330 cm", "0.22 mm");
        assertEquals(FITS, passage(wire, micro).overTail().in().verdict());
    }

    @Test
    void taperIsCutWhereItsLumenEnds() {
        SampleDevice cone = device("g", GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 cm", "100 cm")
                .taperedBore("0 cm", "200 cm", "1.4 mm", "0.4 mm");
        assertEquals(length("0.1 mm"), passage(rod("m", MICROCATHETER, "135 cm", "0.8 mm"), cone).in().clearance()
                .get().nominal());
    }

    @Test
    void shaftAloneBlocksWhereTheWireIsNotStated() {
        assertEquals(BLOCKED, passage(balloon("b", "0.85 mm", "1.1 mm").takesWire("?"), guide("g", "1 mm")).in()
                .verdict());
    }

    @Test
    void sidePortCountsBesideALumenOverTheWholeLength() {
        SampleDevice dual = device("d", DUAL_LUMEN_MICROCATHETER).length("140 cm").takesWire("0.3 mm")
                .section("shaft", "0 cm", "140 cm", "0.9 mm").overTheWire("140 cm", "0.4 mm")
                .sidePort("20 cm", "0.4 mm");
        assertEquals(BLOCKED, passage(dual, guide("g", "1.1 mm")).in().verdict());
        assertEquals(length("20 cm"), passage(dual, guide("g", "1.1 mm")).in().limiting().get().deviceStation());
    }

    @Test
    void pairOfSectionsAroundThePortIsCutThere() {
        SampleDevice device = device("b", BALLOON_CATHETER).length("140 cm").takesWire("0.3 mm")
                .taper("shaft", "0 cm", "100 cm", "0.5 mm", "0.9 mm").section("hypotube", "100 cm", "140 cm", "0.5 mm")
                .sidePort("50 cm", "0.4 mm");
        PhaseAnswer answer = passage(device, guide("g", "1 mm")).under(TestRules.exact()).in();
        // At the port 0.7 mm and 0.3 mm of wire fill the lumen.
        assertEquals(length("50 cm"), answer.limiting().get().deviceStation());
        assertEquals(BLOCKED, answer.verdict());
    }

    private static Length nominal(SampleDevice inner, String lumen) {
        return passage(inner, guide("g", lumen)).in().clearance().get().nominal();
    }

    private static Contour ovalContour(String width, String height) {
        return new Contour.Oval(Dimension.parse(width), Dimension.parse(height));
    }

    private static SampleDevice oval(String width, String height) {
        return device("d", DUAL_LUMEN_MICROCATHETER).length("140 cm").oval("shaft", "0 cm", "140 cm", width, height);
    }

    private static SampleDevice bundle(Contour.Member... members) {
        return device("d", DUAL_LUMEN_MICROCATHETER).length("140 cm").bundle("shaft", "0 cm", "140 cm", members);
    }
}
