/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.INTRODUCER_SHEATH;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.device.DeviceKind.ROTATIONAL_BURR;
import static org.ferrule.fit.device.DeviceKind.STENT_SYSTEM;
import static org.ferrule.fit.sample.SampleClaim.compatible;
import static org.ferrule.fit.sample.SampleClaim.largestDevice;
import static org.ferrule.fit.sample.SampleClaim.minimumLumen;
import static org.ferrule.fit.sample.SampleClaim.notCompatible;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Authority.CLAIM;
import static org.ferrule.fit.verdict.Authority.GEOMETRY;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.ferrule.fit.verdict.Verdict.UNKNOWN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleClaim;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** What makers claim of a pair: label against label, in its scope, over geometry. The device leaves 0.01 mm: tight. */
class ClaimTest {
    private static final String LUMEN = "0.070 in";
    private static final String PROFILE = "1.768 mm";

    @Test
    void geometryDecidesWhereNobodyClaims() {
        assertAnswer(TIGHT, GEOMETRY, passage(balloon(), sixFrench()).in());
    }

    @Test
    void minimumThatTheLabelReachesFits() {
        PhaseAnswer answer = passage(balloon().claim(minimumLumen(LUMEN).kinds(GUIDE_CATHETER)), sixFrench()).in();
        assertAnswer(FITS, CLAIM, answer);
        assertEquals(TIGHT, answer.geometry());
        assertEquals(Reason.of(ReasonCode.CLAIM_SAYS_YES, Reason.name("b"), Reason.diameter(length(LUMEN)),
                Reason.name(LUMEN), Reason.source(new SourceRef("instructions", "3", "7"))), answer.reasons().get(0));
        assertFalse(answer.hasConflict());
    }

    @Test
    void minimumThatTheLabelMissesIsBlocked() {
        PhaseAnswer answer = passage(rod("b", BALLOON_CATHETER, "142 cm", "1 mm")
                .claim(minimumLumen("0.071 in").kinds(GUIDE_CATHETER)), sixFrench()).in();
        assertAnswer(BLOCKED, CLAIM, answer);
        assertEquals(FITS, answer.geometry());
        assertEquals(ReasonCode.CLAIM_SAYS_NO, answer.reasons().get(0).code());
    }

    @Test
    void labelsAreComparedWithoutTolerance() {
        // 1.78 mm is what 0.070 in is rounded to, and yet a little more
        assertEquals(BLOCKED, verdict(balloon().claim(minimumLumen("1.78 mm").kinds(GUIDE_CATHETER)), sixFrench()));
        assertEquals(FITS, verdict(balloon().claim(minimumLumen("1.778 mm").kinds(GUIDE_CATHETER)), sixFrench()));
    }

    @Test
    void smallestFigureOfTheLumenIsItsLabel() {
        SampleDevice stepped = device("g", GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 cm", "100 cm").bore("0 cm", "90 cm", LUMEN)
                .bore("90 cm", "100 cm", "0.069 in");
        assertEquals(BLOCKED, verdict(balloon().claim(minimumLumen(LUMEN).kinds(GUIDE_CATHETER)), stepped));
    }

    @Test
    void lumenThatIsKnownInPartCanOnlyBeRefused() {
        SampleDevice partly = device("g", GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 cm", "100 cm").bore("0 cm", "90 cm", LUMEN)
                .bore("90 cm", "100 cm", "?");
        assertEquals(UNKNOWN, verdict(balloon().claim(minimumLumen(LUMEN).kinds(GUIDE_CATHETER)), partly));
        assertEquals(BLOCKED, verdict(balloon().claim(minimumLumen("0.071 in").kinds(GUIDE_CATHETER)), partly));
    }

    @Test
    void claimOfAGuideLumenSaysNothingOfAnExtension() {
        SampleDevice claimed = balloon().claim(minimumLumen(LUMEN).kinds(GUIDE_CATHETER));
        SampleDevice extension = device("x", GUIDE_EXTENSION).length("100 cm").working("100 cm", LUMEN);
        assertAnswer(TIGHT, GEOMETRY, passage(claimed, extension).in());
    }

    @Test
    void claimOfOneSizeSaysNothingOfAnother() {
        SampleDevice claimed = balloon().claim(compatible().kinds(GUIDE_CATHETER).sizes("6 Fr", "7 Fr"));
        assertAnswer(FITS, CLAIM, passage(claimed, sixFrench()).in());
        assertAnswer(TIGHT, GEOMETRY, passage(claimed, sixFrench().size("8 Fr")).in());
    }

    @Test
    void claimOfOneDeviceSaysNothingOfAnother() {
        assertAnswer(FITS, CLAIM, passage(balloon().claim(compatible().devices("g", "h")), sixFrench()).in());
        assertAnswer(TIGHT, GEOMETRY, passage(balloon().claim(compatible().devices("h")), sixFrench()).in());
    }

    @Test
    void deviceThatIsNamedNeedsNoKind() {
        SampleDevice claimed = balloon().claim(compatible().devices("g").kinds(INTRODUCER_SHEATH).sizes("9 Fr"));
        assertEquals(FITS, verdict(claimed, sixFrench()));
    }

    @Test
    void unscopedYesIsNoAuthority() {
        assertAnswer(TIGHT, GEOMETRY, passage(balloon().claim(minimumLumen(LUMEN)), sixFrench()).in());
        assertAnswer(TIGHT, GEOMETRY, passage(balloon().claim(compatible().sizes("6 Fr")), sixFrench()).in());
    }

    @Test
    void unscopedNoIsHeard() {
        assertAnswer(BLOCKED, CLAIM, passage(balloon().claim(minimumLumen("0.071 in")), sixFrench()).in());
        assertAnswer(BLOCKED, CLAIM, passage(balloon().claim(notCompatible()), sixFrench()).in());
    }

    @Test
    void outerDeviceClaimsItsLargestPartner() {
        SampleDevice sheath = device("s", INTRODUCER_SHEATH).length("11 cm").working("11 cm", "1.778 mm");
        assertEquals(FITS, verdict(balloon(), sheath.claim(largestDevice("1.77 mm").kinds(BALLOON_CATHETER))));
        assertEquals(BLOCKED, verdict(balloon(), sheath.claim(largestDevice("1.76 mm").kinds(BALLOON_CATHETER))));
    }

    @Test
    void claimOfAMinimumLumenIsAboutTheLumenAroundTheClaimant() {
        // the guide's own minimum (for the sheath that it goes into) says nothing of what goes into the guide
        assertAnswer(TIGHT, GEOMETRY,
                passage(balloon(), sixFrench().claim(minimumLumen("3 mm").kinds(BALLOON_CATHETER))).in());
        assertAnswer(TIGHT, GEOMETRY,
                passage(balloon().claim(largestDevice("0.1 mm").kinds(GUIDE_CATHETER)), sixFrench()).in());
    }

    @Test
    void claimOfADeviceAboutItselfIsReadOnce() {
        SampleDevice both = sixFrench().section("shaft", "0 cm", "100 cm", "1 mm").claim(notCompatible().devices("g"));
        assertEquals(1, passage(both, both).in().reasons().stream()
                .filter(r -> r.code() == ReasonCode.CLAIM_EXCLUDES_PARTNER).count());
        SampleDevice minimum = sixFrench().section("shaft", "0 cm", "100 cm", "1 mm")
                .claim(minimumLumen(LUMEN).kinds(GUIDE_CATHETER));
        assertEquals(1, passage(minimum, minimum).in().reasons().stream()
                .filter(r -> r.code() == ReasonCode.CLAIM_SAYS_YES).count());
    }

    @Test
    void partnerThatIsNamedAsIncompatibleIsBlocked() {
        PhaseAnswer answer = passage(balloon(), sixFrench().claim(notCompatible().kinds(BALLOON_CATHETER))).in();
        assertAnswer(BLOCKED, CLAIM, answer);
        assertEquals(ReasonCode.CLAIM_EXCLUDES_PARTNER, answer.reasons().get(0).code());
    }

    @Test
    void yesHoldsForTheStatedWireAndThinnerOnes() {
        SampleClaim claim = compatible().kinds(GUIDE_CATHETER).wire("0.014 in");
        assertAnswer(FITS, CLAIM, passage(balloon().claim(claim), sixFrench()).wire("0.014 in").in());
        assertAnswer(FITS, CLAIM, passage(balloon().claim(claim), sixFrench()).wire("0.010 in").in());
        assertAnswer(TIGHT, GEOMETRY, passage(balloon().claim(claim), sixFrench()).wire("0.018 in").in());
        assertAnswer(TIGHT, GEOMETRY, passage(balloon().claim(claim), sixFrench()).in());
    }

    @Test
    void noHoldsForTheStatedWireAndThickerOnes() {
        SampleClaim claim = notCompatible().kinds(GUIDE_CATHETER).wire("0.014 in");
        assertAnswer(TIGHT, GEOMETRY, passage(balloon().claim(claim), sixFrench()).wire("0.010 in").in());
        assertAnswer(BLOCKED, CLAIM, passage(balloon().claim(claim), sixFrench()).wire("0.014 in").in());
        assertAnswer(BLOCKED, CLAIM, passage(balloon().claim(claim), sixFrench()).wire("0.018 in").in());
    }

    @Test
    void noIsHeardWhereTheWireIsLeftOpen() {
        SampleDevice claimed = balloon().claim(notCompatible().kinds(GUIDE_CATHETER).wire("0.014 in"));
        assertEquals(BLOCKED, verdict(claimed, sixFrench()));
    }

    @Test
    void wireThatCannotBeReadLimitsAYesAndNoNo() {
        SampleDevice yes = balloon().claim(compatible().kinds(GUIDE_CATHETER).wire("thin"));
        assertAnswer(TIGHT, GEOMETRY, passage(yes, sixFrench()).wire("0.010 in").in());
        SampleDevice no = balloon().claim(notCompatible().kinds(GUIDE_CATHETER).wire("thin"));
        assertAnswer(BLOCKED, CLAIM, passage(no, sixFrench()).wire("0.010 in").in());
    }

    @Test
    void wireInsideIsItselfTheWireThatAClaimSpeaksOf() {
        SampleDevice micro = rod("m", MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm", "0.016 in")
                .claim(compatible().kinds(GUIDEWIRE).wire("0.014 in"));
        assertAnswer(FITS, CLAIM, passage(wire("0.014 in"), micro).overTail().in());
        assertAnswer(TIGHT, GEOMETRY, passage(wire("0.0155 in"), micro).overTail().in());
    }

    @Test
    void yesGoingInSaysNothingOfComingOut() {
        SampleDevice claimed = balloon().claim(compatible().kinds(GUIDE_CATHETER));
        assertAnswer(FITS, CLAIM, passage(claimed, sixFrench()).in());
        assertAnswer(TIGHT, GEOMETRY, passage(claimed, sixFrench()).out());
    }

    @Test
    void yesComingOutSaysNothingOfGoingIn() {
        SampleDevice claimed = balloon().claim(compatible().kinds(GUIDE_CATHETER).covers(Phase.OUT));
        assertAnswer(TIGHT, GEOMETRY, passage(claimed, sixFrench()).in());
        assertAnswer(FITS, CLAIM, passage(claimed, sixFrench()).out());
    }

    @Test
    void noGoingInCarriesOverToComingOut() {
        SampleDevice claimed = balloon().claim(notCompatible().kinds(GUIDE_CATHETER));
        assertAnswer(BLOCKED, CLAIM, passage(claimed, sixFrench()).out());
    }

    @Test
    void noComingOutSaysNothingOfGoingIn() {
        SampleDevice claimed = balloon().claim(notCompatible().kinds(GUIDE_CATHETER).covers(Phase.OUT));
        assertAnswer(TIGHT, GEOMETRY, passage(claimed, sixFrench()).in());
        assertAnswer(BLOCKED, CLAIM, passage(claimed, sixFrench()).out());
    }

    @Test
    void claimThatCannotBeReadIsSilent() {
        assertAnswer(TIGHT, GEOMETRY,
                passage(balloon().claim(minimumLumen("0,070 in").kinds(GUIDE_CATHETER)), sixFrench()).in());
    }

    @Test
    void claimWithoutAValueIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> minimumLumen("?").claim());
        assertThrows(IllegalArgumentException.class, () -> largestDevice("?").claim());
    }

    @Test
    void yesAgainstNominalGeometryIsTightWithAConflict() {
        SampleDevice thick = rod("b", BALLOON_CATHETER, "142 cm", "1.8 mm")
                .claim(minimumLumen(LUMEN).kinds(GUIDE_CATHETER));
        PhaseAnswer answer = passage(thick, sixFrench()).in();
        assertAnswer(TIGHT, CLAIM, answer);
        assertEquals(BLOCKED, answer.geometry());
        assertEquals(Reason.of(ReasonCode.YES_AGAINST_GEOMETRY, Reason.clearance(length("-0.022 mm"))),
                conflict(answer));
    }

    @Test
    void yesAgainstWorstCaseOnlyIsNoConflict() {
        SampleDevice wide = rod("b", BALLOON_CATHETER, "142 cm", "1.768 mm ±0.1")
                .claim(minimumLumen(LUMEN).kinds(GUIDE_CATHETER));
        PhaseAnswer answer = passage(wide, sixFrench()).in();
        assertAnswer(FITS, CLAIM, answer);
        assertFalse(answer.hasConflict());
    }

    @Test
    void noAgainstGeometryIsBlockedWithAConflict() {
        SampleDevice slim = rod("b", BALLOON_CATHETER, "142 cm", "1 mm").claim(notCompatible().devices("g"));
        PhaseAnswer answer = passage(slim, sixFrench()).in();
        assertAnswer(BLOCKED, CLAIM, answer);
        assertEquals(Reason.of(ReasonCode.NO_AGAINST_GEOMETRY, Reason.clearance(length("0.778 mm"))),
                conflict(answer));
    }

    @Test
    void noOutweighsYesAndTheDisagreementIsShown() {
        PhaseAnswer answer = passage(balloon().claim(minimumLumen(LUMEN).kinds(GUIDE_CATHETER)),
                sixFrench().claim(notCompatible().devices("b"))).in();
        assertAnswer(BLOCKED, CLAIM, answer);
        assertEquals(ReasonCode.CLAIMS_DISAGREE, conflict(answer).code());
    }

    @Test
    void statedWireIsAClaimAndNoLumen() {
        SampleDevice micro = rod("m", MICROCATHETER, "135 cm", "0.9 mm").takesWire("0.014 in").lumen("wire",
                Lumen.Use.WIRE, Lumen.Opening.HUB, "0 cm", "135 cm");
        assertAnswer(FITS, CLAIM, passage(wire("0.014 in"), micro).overTail().in());
        assertAnswer(BLOCKED, CLAIM, passage(wire("0.0141 in"), micro).overTail().in());
        assertEquals(UNKNOWN, passage(wire("0.014 in"), micro).overTail().in().geometry());
    }

    @Test
    void statedWireIsNoClaimAboutAnotherLumen() {
        SampleDevice dual = rod("d", STENT_SYSTEM, "140 cm", "1 mm").takesWire("0.014 in")
                .overTheWire("140 cm", "0.4 mm")
                .lumen("second", Lumen.Use.FLUSH, Lumen.Opening.HUB, "0 cm", "140 cm").bore("0 cm", "140 cm", "0.9 mm");
        assertAnswer(FITS, GEOMETRY, passage(wire("0.035 in"), dual).overTail().lumen("second")
                .under(TestRules.exact().required("0.01 mm")).in());
    }

    @Test
    void statedWireIsComparedWithWhatEntersOfTheWire() {
        // common practice: a burr takes its own wire of 0.009 in, whose spring tip of 0.014 in stays ahead
        SampleDevice burr = rod("b", ROTATIONAL_BURR, "135 cm", "1.25 mm").takesWire("0.009 in")
                .overTheWire("135 cm", "0.011 in");
        SampleDevice burrWire = device("w", GUIDEWIRE).length("330 cm")
                .section("spring tip", "0 mm", "22 mm", "0.014 in").section("shaft", "22 mm", "330 cm", "0.009 in");
        assertAnswer(FITS, CLAIM, passage(burrWire, burr).overTail().in());
        assertAnswer(BLOCKED, CLAIM, passage(burrWire, burr).overTail().reach("10 mm").in());
        assertAnswer(BLOCKED, CLAIM, passage(wire("0.014 in"), burr).overTail().in());
    }

    @Test
    void largestDeviceIsComparedWithWhatEntersOfTheDevice() {
        SampleDevice thickBehind = device("b", BALLOON_CATHETER).length("142 cm")
                .section("shaft", "0 cm", "120 cm", "1 mm").section("strain relief", "120 cm", "142 cm", "2 mm");
        SampleDevice claiming = sixFrench().claim(largestDevice("1.5 mm").kinds(BALLOON_CATHETER));
        assertAnswer(FITS, CLAIM, passage(thickBehind, claiming).reach("20 cm").in());
        assertAnswer(BLOCKED, CLAIM, passage(thickBehind, claiming).reach("21 cm").in());
    }

    private static SampleDevice balloon() {
        return rod("b", BALLOON_CATHETER, "142 cm", PROFILE);
    }

    private static SampleDevice sixFrench() {
        return guide("g", LUMEN);
    }

    private static SampleDevice wire(String diameter) {
        return rod("w", GUIDEWIRE, "190 cm", diameter);
    }

    private static Verdict verdict(SampleDevice inner, SampleDevice outer) {
        return passage(inner, outer).in().verdict();
    }

    private static void assertAnswer(Verdict verdict, Authority authority, PhaseAnswer answer) {
        assertEquals(verdict + " by " + authority, answer.verdict() + " by " + answer.authority(),
                () -> answer.reasons().toString());
    }

    private static Reason conflict(PhaseAnswer answer) {
        return answer.reasons().stream().filter(r -> r.code().weight() == ReasonCode.Weight.CONFLICT).findFirst()
                .orElseThrow();
    }
}
