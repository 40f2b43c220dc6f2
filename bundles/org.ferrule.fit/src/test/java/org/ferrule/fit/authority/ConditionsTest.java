/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.device.DeviceKind.OTHER;
import static org.ferrule.fit.sample.SampleBench.didNotPass;
import static org.ferrule.fit.sample.SampleBench.passed;
import static org.ferrule.fit.sample.SampleClaim.compatible;
import static org.ferrule.fit.sample.SampleClaim.largestDevice;
import static org.ferrule.fit.sample.SampleClaim.minimumLumen;
import static org.ferrule.fit.sample.SampleClaim.notCompatible;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.verdict.Authority.BENCH;
import static org.ferrule.fit.verdict.Authority.CLAIM;
import static org.ferrule.fit.verdict.Authority.GEOMETRY;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleClaim;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Statements are heard only where they speak of what is asked: beside others, through an extension, used. */
class ConditionsTest {

    @Test
    void yesOfTheDeviceAloneIsNotHeardBesideOthers() {
        assertAnswer(FITS, CLAIM, passage(claiming(compatible()), guide("g", "1.01 mm")).in());
        assertAnswer(TIGHT, GEOMETRY, tightBeside(claiming(compatible())).in());
        assertAnswer(TIGHT, GEOMETRY, tightBeside(claiming(minimumLumen("1 mm"))).in());
    }

    @Test
    void yesOfTheOuterDeviceIsNotHeardBesideOthersEither() {
        SampleDevice outer = guide("g", "1.51 mm").claim(largestDevice("1.2 mm").kinds(MICROCATHETER));
        assertAnswer(FITS, CLAIM, passage(micro("1 mm"), outer).in());
        assertAnswer(TIGHT, GEOMETRY, passage(micro("1 mm"), outer).beside(other(), "10 cm").in());
    }

    @Test
    void noOfTheDeviceAloneIsHeardBesideOthers() {
        assertAnswer(BLOCKED, CLAIM, tightBeside(claiming(notCompatible())).in());
        assertAnswer(BLOCKED, CLAIM, tightBeside(claiming(minimumLumen("2 mm"))).in());
    }

    @Test
    void claimBesideOthersIsHeardThere() {
        assertAnswer(FITS, CLAIM, tightBeside(claiming(compatible().besideOthers())).in());
        assertAnswer(BLOCKED, CLAIM, tightBeside(claiming(notCompatible().besideOthers())).in());
    }

    @Test
    void claimBesideOthersSaysYesOfTheDeviceAloneButNotNo() {
        assertAnswer(FITS, CLAIM, passage(claiming(compatible().besideOthers()), guide("g", "1.01 mm")).in());
        assertAnswer(TIGHT, GEOMETRY, passage(claiming(notCompatible().besideOthers()), guide("g", "1.01 mm")).in());
    }

    @Test
    void passOnTheBenchIsOfTheDeviceAlone() {
        assertAnswer(FITS, BENCH, passage(micro("1 mm"), guide("g", "1.01 mm")).bench(passed("m", "g")).in());
        assertAnswer(TIGHT, GEOMETRY, tightBeside(micro("1 mm")).bench(passed("m", "g")).in());
        assertAnswer(BLOCKED, BENCH, tightBeside(micro("1 mm")).bench(didNotPass("m", "g")).in());
    }

    @Test
    void noForTheGuideCountsForTheWayToTheCollar() {
        assertAnswer(BLOCKED, CLAIM, through(claiming(minimumLumen("0.071 in"))).in());
        assertAnswer(BLOCKED, CLAIM, through(claiming(notCompatible())).in());
    }

    @Test
    void yesForTheGuideSaysNothingOfTheExtension() {
        assertAnswer(TIGHT, GEOMETRY, through(claiming(compatible())).in());
        assertAnswer(TIGHT, GEOMETRY, through(claiming(compatible().besideOthers())).in());
    }

    @Test
    void claimOfExtensionsIsComparedWithTheLumenOfTheExtension() {
        SampleClaim wide = minimumLumen("1.1 mm");
        assertAnswer(BLOCKED, CLAIM, through(micro("1 mm").claim(wide.kinds(GUIDE_EXTENSION))).in());
        SampleClaim enough = minimumLumen("1.01 mm").kinds(GUIDE_EXTENSION);
        assertAnswer(TIGHT, GEOMETRY, through(micro("1 mm").claim(enough)).in());
        assertAnswer(FITS, CLAIM, through(micro("1 mm").claim(enough.besideOthers())).in());
    }

    @Test
    void extensionClaimsWhatItTakes() {
        SampleDevice extension = extension().claim(largestDevice("0.9 mm").kinds(MICROCATHETER));
        assertAnswer(BLOCKED, CLAIM,
                passage(micro("1 mm"), guide("g", "0.070 in")).through(extension, "10 cm").in());
    }

    @Test
    void failureInTheExtensionOnTheBenchCounts() {
        assertAnswer(BLOCKED, BENCH, through(micro("1 mm")).bench(didNotPass("m", "x")).in());
        assertAnswer(BLOCKED, BENCH, through(micro("1 mm")).bench(didNotPass("m", "g")).in());
        assertAnswer(TIGHT, GEOMETRY, through(micro("1 mm")).bench(passed("m", "x"), passed("m", "g")).in());
    }

    @Test
    void yesGoingInIsNotOfABalloonThatWasInflated() {
        SampleDevice balloon = device("b", BALLOON_CATHETER).length("140 cm").folded("balloon", "0 cm", "2 cm", "1 mm",
                "1 mm").section("shaft", "2 cm", "140 cm", "0.8 mm")
                .claim(compatible().kinds(GUIDE_CATHETER).covers(Phase.IN, Phase.OUT));
        assertAnswer(FITS, CLAIM, passage(balloon, guide("g", "1.01 mm")).in());
        assertAnswer(TIGHT, GEOMETRY, passage(balloon, guide("g", "1.01 mm")).afterInflation().in());
        assertAnswer(FITS, CLAIM, passage(balloon, guide("g", "1.01 mm")).afterInflation().out());
    }

    @Test
    void noGoingInIsOfAnInflatedBalloonToo() {
        SampleDevice balloon = device("b", BALLOON_CATHETER).length("140 cm").folded("balloon", "0 cm", "140 cm",
                "0.8 mm").claim(notCompatible().kinds(GUIDE_CATHETER));
        assertAnswer(BLOCKED, CLAIM, passage(balloon, guide("g", "1.01 mm")).afterInflation().in());
    }

    @Test
    void whatDoesNotInflateIsAsBefore() {
        assertAnswer(FITS, CLAIM, passage(claiming(compatible()), guide("g", "1.01 mm")).afterInflation().in());
    }

    private static SampleDevice claiming(SampleClaim claim) {
        return micro("1 mm").claim(claim.kinds(GUIDE_CATHETER));
    }

    /** The rules ask for 0.025 mm; 0.01 mm is left. */
    private static SampleQuestion tightBeside(SampleDevice inner) {
        return passage(inner, guide("g", "1.51 mm")).beside(other(), "10 cm");
    }

    private static SampleQuestion through(SampleDevice inner) {
        return passage(inner, guide("g", "0.070 in")).through(extension(), "10 cm");
    }

    private static SampleDevice extension() {
        return device("x", GUIDE_EXTENSION).length("150 cm").section("tube", "0 cm", "25 cm", "1.7 mm")
                .section("push rod", "25 cm", "150 cm", "0.4 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.01 mm");
    }

    private static SampleDevice micro(String diameter) {
        return rod("m", MICROCATHETER, "135 cm", diameter);
    }

    private static SampleDevice other() {
        return rod("a", OTHER, "135 cm", "0.5 mm");
    }

    private static void assertAnswer(Verdict verdict, Authority authority, PhaseAnswer answer) {
        assertEquals(verdict, answer.verdict(), () -> answer.reasons().toString());
        assertEquals(authority, answer.authority());
    }
}
