/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.ROTATIONAL_BURR;
import static org.ferrule.fit.sample.SampleClaim.minimumLumen;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.ferrule.fit.verdict.Verdict.UNKNOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.apache.commons.csv.CSVRecord;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.SharedTable;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rigid parts in bends: a number for lumens, only a hint for vessels. */
class BendCheckTest {

    static List<CSVRecord> longestLengths() {
        return SharedTable.rows("rigid-in-bend.csv").stream().filter(r -> r.get("asked").equals("longest")).toList();
    }

    @ParameterizedTest
    @MethodSource("longestLengths")
    void longestRigidLengthPassesAndALongerOneStops(CSVRecord row) {
        double longest = Double.parseDouble(row.get("expectedMm"));
        assertEquals(FITS, rigid(row, longest - 1e-4));
        assertEquals(BLOCKED, rigid(row, longest + 1e-4));
    }

    private static Verdict rigid(CSVRecord row, double mm) {
        String to = String.format(Locale.ROOT, "%.4f mm", mm);
        SampleDevice part = device("d", ROTATIONAL_BURR).length("135 cm")
                .section("burr", "0 mm", to, row.get("deviceMm") + " mm").rigid();
        SampleQuestion question = passage(part, guide("g", row.get("lumenMm") + " mm")).reach("10 cm")
                .under(TestRules.exact().required("0 mm"));
        return find(question.bentLumen(row.get("radiusMm") + " mm")).verdict();
    }

    @Test
    void lessThanTheRequiredClearanceIsTight() {
        Finding finding = find(question(burr("10 mm"), "1.82 mm").bentLumen("20 mm"));
        assertEquals(TIGHT, finding.verdict());
        assertTrue(codes(finding).contains(ReasonCode.RIGID_TIGHT_IN_BEND));
    }

    @Test
    void neighbouringRigidSectionsCountTogether() {
        SampleDevice two = device("d", ROTATIONAL_BURR).length("135 cm").section("burr", "0 mm", "6 mm", "1.2 mm")
                .rigid()
                .section("housing", "6 mm", "12 mm", "1.2 mm").rigid();
        assertEquals(BLOCKED, find(question(two, "1.778 mm").bentLumen("20 mm")).verdict());
        SampleDevice apart = device("d", ROTATIONAL_BURR).length("135 cm").section("burr", "0 mm", "6 mm", "1.2 mm")
                .rigid()
                .section("shaft", "6 mm", "7 mm", "1 mm").section("housing", "7 mm", "13 mm", "1.2 mm").rigid();
        assertEquals(FITS, find(question(apart, "1.778 mm").bentLumen("20 mm")).verdict());
    }

    @Test
    void partsOfUnequalThicknessAreTightWhereNothingIsProved() {
        SampleDevice uneven = device("d", ROTATIONAL_BURR).length("135 cm").section("nose", "0 mm", "6 mm", "0.5 mm")
                .rigid()
                .section("burr", "6 mm", "12 mm", "1.2 mm").rigid();
        Finding finding = find(question(uneven, "1.778 mm").bentLumen("20 mm"));
        assertEquals(TIGHT, finding.verdict());
        assertTrue(codes(finding).contains(ReasonCode.NOT_PROVED));
    }

    @Test
    void partsThatDoNotComeToTheOuterTipPassNoBend() {
        SampleDevice late = device("d", ROTATIONAL_BURR).length("135 cm").section("drive", "30 cm", "60 cm", "1.2 mm")
                .rigid();
        assertEquals(FITS, find(question(late, "1.778 mm").bentLumen("20 mm")).verdict());
    }

    @Test
    void missingFigureIsUnknownUnlessItCannotMatter() {
        SampleDevice open = device("d", ROTATIONAL_BURR).length("135 cm").section("burr", "0 mm", "10 mm", "?").rigid();
        assertEquals(UNKNOWN, find(question(open, "1.778 mm").bentLumen("20 mm")).verdict());
        SampleDevice longAnyway = device("d", ROTATIONAL_BURR).length("135 cm")
                .section("burr", "0 mm", "20 mm", "1.2 mm")
                .rigid().section("housing", "20 mm", "25 mm", "?").rigid();
        assertEquals(BLOCKED, find(question(longAnyway, "1.778 mm").bentLumen("20 mm")).verdict());
        SampleDevice soft = device("d", ROTATIONAL_BURR).length("135 cm").section("tip", "0 mm", "10 mm", "?");
        assertEquals(FITS, find(question(soft, "?").bentLumen("20 mm")).verdict());
    }

    @Test
    void shortBendIsSaidToErrOnTheSafeSide() {
        Bend bend = new Bend(Bend.Where.LUMEN, length("20 mm"), Optional.of(BigDecimal.TEN));
        assertTrue(codes(find(question(burr("8 mm"), "1.778 mm").bend(bend)))
                .contains(ReasonCode.BEND_SHORTER_THAN_PART));
    }

    @Test
    void bendNarrowerThanItsLumenCountsLessOfIt() {
        Finding finding = find(question(burr("2 mm"), "1.778 mm").bentLumen("1.3 mm"));
        assertTrue(codes(finding).contains(ReasonCode.BEND_NARROWER_THAN_LUMEN));
        assertEquals(TIGHT, finding.verdict());
    }

    @Test
    void vesselGetsAHintAndNoVerdict() {
        // least radius of a part of 10 mm and 1.2 mm in 1.778 mm: 21.03 mm (closed form; computed)
        Finding finding = find(question(burr("10 mm"), "1.3 mm").bend(vessel("10 mm", "1.778 mm")));
        assertEquals(FITS, finding.verdict());
        assertEquals(List.of(ReasonCode.VESSEL_MUST_STRAIGHTEN), codes(finding));
        BendRoom room = (BendRoom) finding.evidence().get(0);
        assertEquals(21.03, room.leastRadius().orElseThrow().mm(), 0.005);
        assertEquals(List.of(), codes(find(question(burr("10 mm"), "1.3 mm").bend(vessel("22 mm", "1.778 mm")))));
    }

    @Test
    void vesselOfUnknownDiameterIsToldHowWideItWouldHaveToBe() {
        Bend bend = new Bend(Bend.Where.VESSEL, length("20 mm"), Optional.empty());
        Finding finding = find(question(burr("10 mm"), "1.3 mm").bend(bend));
        assertEquals(List.of(ReasonCode.VESSEL_MUST_BE_WIDE), codes(finding));
        Reason.DiameterArgument needed = (Reason.DiameterArgument) finding.reasons().get(0).arguments().get(3);
        assertEquals(1.8068, needed.value().mm(), 1e-4);
    }

    @Test
    void claimAboutDiametersSaysNothingOfBends() {
        SampleDevice claimed = burr("20 mm").claim(minimumLumen("1.7 mm")
                .kinds(GUIDE_CATHETER));
        assertEquals(BLOCKED, question(claimed, "1.778 mm").bentLumen("20 mm").in().verdict());
    }

    private static Bend vessel(String radius, String diameter) {
        return new Bend(Bend.Where.VESSEL, length(radius), Optional.empty(), Optional.of(length(diameter)));
    }

    private static SampleDevice burr(String rigidLength) {
        return device("d", ROTATIONAL_BURR).length("135 cm").section("burr", "0 mm", rigidLength, "1.2 mm").rigid()
                .section("shaft", rigidLength, "135 cm", "1 mm");
    }

    private static SampleQuestion question(SampleDevice inner, String lumen) {
        return passage(inner, guide("g", lumen)).reach("10 cm");
    }

    private static Finding find(SampleQuestion question) {
        return new BendCheck().check(question.question(), Phase.IN);
    }

    private static List<ReasonCode> codes(Finding finding) {
        return finding.reasons().stream().map(Reason::code).toList();
    }

    /** 1.2 mm pass up to 9.76 mm, 1.1 mm up to 10.56 mm, and 1.2 mm in 1.856 mm up to 10.40 mm (closed form; computed). */
    @Test
    void whereACentreIsOnlyAssumedNoPartStopsThatPassesAtBest() {
        assertEquals(BLOCKED, find(question(part("10 mm", "1.2 mm"), "1.778 mm").bentLumen("20 mm")).verdict());
        assertEquals(TIGHT, find(question(part("10 mm", "1.1..1.3 mm"), "1.778 mm").bentLumen("20 mm")).verdict());
        assertEquals(TIGHT, find(question(part("10 mm", "1.2 mm"), "1.7..1.856 mm").bentLumen("20 mm")).verdict());
        assertEquals(BLOCKED, find(question(part("10.6 mm", "1.1..1.3 mm"), "1.778 mm").bentLumen("20 mm")).verdict());
        assertEquals(BLOCKED, find(question(part("10.6 mm", "1.2 mm"), "1.7..1.856 mm").bentLumen("20 mm")).verdict());
    }

    private static SampleDevice part(String rigidLength, String diameter) {
        return device("d", ROTATIONAL_BURR).length("135 cm").section("burr", "0 mm", rigidLength, diameter).rigid();
    }

    /** A quarter of a turn of 20 mm is 31 mm long. */
    @Test
    void aBendThatIsLongAndWideEnoughNeedsNoNote() {
        Bend bend = new Bend(Bend.Where.LUMEN, length("20 mm"), Optional.of(BigDecimal.valueOf(90)));
        assertEquals(List.of(ReasonCode.RIGID_PASSES_BEND), codes(find(question(burr("8 mm"), "1.778 mm").bend(bend))));
        assertTrue(!codes(find(question(burr("1 mm"), "1.778 mm").bentLumen("1.778 mm")))
                .contains(ReasonCode.BEND_NARROWER_THAN_LUMEN));
    }

    @Test
    void whatWasInflatedBeforeGoesRoundTheBendGrown() {
        SampleDevice balloon = device("b", BALLOON_CATHETER).length("135 cm")
                .folded("balloon", "0 mm", "8 mm", "0.8 mm")
                .rigid();
        SampleQuestion question = question(balloon, "1.778 mm").bentLumen("20 mm")
                .under(TestRules.exact().growth("1.1", "1.2", "1.25"));
        assertEquals(length("0.8 mm"), ((BendRoom) find(question).evidence().get(0)).deviceDiameter());
        assertEquals(length("1 mm"), ((BendRoom) find(question.afterInflation()).evidence().get(0)).deviceDiameter());
    }

    @Test
    void aPartIsCalledByItsThickestSection() {
        SampleDevice nose = device("d", ROTATIONAL_BURR).length("135 cm").section("nose", "0 mm", "3 mm", "0.5 mm")
                .rigid().section("burr", "3 mm", "6 mm", "1.2 mm").rigid();
        SampleDevice tail = device("d", ROTATIONAL_BURR).length("135 cm").section("burr", "0 mm", "3 mm", "1.2 mm")
                .rigid().section("tail", "3 mm", "6 mm", "0.5 mm").rigid();
        for (SampleDevice device : List.of(nose, tail)) {
            BendRoom room = (BendRoom) find(question(device, "1.778 mm").bentLumen("20 mm")).evidence().get(0);
            assertEquals("burr", room.deviceSection());
            assertEquals(length("6 mm"), room.rigidLength());
        }
    }

    @Test
    void onlyTheSectionWithoutAFigureSaysWhy() {
        SampleDevice open = device("d", ROTATIONAL_BURR).length("135 cm").section("burr", "0 mm", "5 mm", "1.2 mm")
                .rigid().section("housing", "5 mm", "9 mm", "?").rigid();
        assertEquals(List.of(ReasonCode.MISSING_FIGURE), codes(find(question(open, "1.778 mm").bentLumen("20 mm"))));
    }

    @Test
    void aPartThatBeginsWhereTheWayEndsPassesNoBend() {
        SampleDevice late = device("d", ROTATIONAL_BURR).length("135 cm").section("drive", "10 cm", "60 cm", "1.2 mm")
                .rigid();
        assertEquals(List.of(), find(question(late, "1.778 mm").bentLumen("20 mm")).evidence());
    }

    /** As a cylinder of 1.2 mm it would stop, but how it lies in the bend nobody proves. */
    @Test
    void whatIsNotRoundProvesNoStop() {
        SampleDevice oval = device("d", ROTATIONAL_BURR).length("135 cm")
                .oval("flat", "0 mm", "12 mm", "1.2 mm", "1.1 mm")
                .rigid();
        Finding finding = find(question(oval, "1.778 mm").bentLumen("20 mm"));
        assertEquals(TIGHT, finding.verdict());
        assertTrue(codes(finding).contains(ReasonCode.NOT_PROVED));
    }
}
