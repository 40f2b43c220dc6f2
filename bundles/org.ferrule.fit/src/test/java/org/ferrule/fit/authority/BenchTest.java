/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.sample.SampleBench.didNotPass;
import static org.ferrule.fit.sample.SampleBench.passed;
import static org.ferrule.fit.sample.SampleClaim.minimumLumen;
import static org.ferrule.fit.sample.SampleClaim.notCompatible;
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

import java.util.List;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** What was seen on a bench: it outranks geometry, and a claim outranks it. */
class BenchTest {

    @Test
    void passOnTheBenchFitsWhereGeometryIsTight() {
        PhaseAnswer answer = tight().bench(passed("b", "g")).in();
        assertAnswer(FITS, BENCH, answer);
        assertEquals(Reason.of(ReasonCode.BENCH_PASSED, Reason.count(5),
                Reason.source(new SourceRef("bench book", "1", "12"))), answer.reasons().get(0));
    }

    @Test
    void failureOnTheBenchBlocksWhereGeometryFits() {
        // common case of the trade: a rigid burr with 0.17 mm of room did not pass an extension
        PhaseAnswer answer = roomy().bench(didNotPass("b", "g")).in();
        assertAnswer(BLOCKED, BENCH, answer);
        assertEquals(List.of(ReasonCode.NO_AGAINST_GEOMETRY), conflicts(answer));
    }

    @Test
    void passAgainstNominalGeometryIsTightWithAConflict() {
        PhaseAnswer answer = thick().bench(passed("b", "g")).in();
        assertAnswer(TIGHT, BENCH, answer);
        assertEquals(List.of(ReasonCode.YES_AGAINST_GEOMETRY), conflicts(answer));
    }

    @Test
    void failureOutweighsAPassAndTheDisagreementIsShown() {
        PhaseAnswer answer = tight().bench(passed("b", "g"), didNotPass("b", "g")).in();
        assertAnswer(BLOCKED, BENCH, answer);
        assertEquals(List.of(ReasonCode.BENCH_RESULTS_DISAGREE), conflicts(answer));
    }

    @Test
    void resultOfAnotherPairIsSilent() {
        assertAnswer(TIGHT, GEOMETRY, tight().bench(passed("b", "x"), didNotPass("x", "g")).in());
    }

    @Test
    void resultOfAnotherLumenIsSilent() {
        assertAnswer(TIGHT, GEOMETRY, tight().bench(passed("b", "g").lumen("side")).in());
        assertAnswer(FITS, BENCH, tight().bench(passed("b", "g").lumen("lumen")).in());
    }

    @Test
    void passHoldsForItsWireAndThinnerOnes() {
        assertAnswer(FITS, BENCH, tight().wire("0.014 in").bench(passed("b", "g").wire("0.014 in")).in());
        assertAnswer(FITS, BENCH, tight().wire("0.010 in").bench(passed("b", "g").wire("0.014 in")).in());
        assertAnswer(TIGHT, GEOMETRY, tight().wire("0.018 in").bench(passed("b", "g").wire("0.014 in")).in());
    }

    @Test
    void failureHoldsForItsWireAndThickerOnes() {
        assertAnswer(TIGHT, GEOMETRY, tight().wire("0.010 in").bench(didNotPass("b", "g").wire("0.014 in")).in());
        assertAnswer(BLOCKED, BENCH, tight().wire("0.014 in").bench(didNotPass("b", "g").wire("0.014 in")).in());
        assertAnswer(BLOCKED, BENCH, tight().wire("0.018 in").bench(didNotPass("b", "g").wire("0.014 in")).in());
    }

    @Test
    void openWireLimitsAPassAndNoFailure() {
        assertAnswer(TIGHT, GEOMETRY, tight().bench(passed("b", "g").wire("0.014 in")).in());
        assertAnswer(BLOCKED, BENCH, tight().bench(didNotPass("b", "g").wire("0.014 in")).in());
    }

    @Test
    void wireThatCannotBeReadLimitsAPassAndNoFailure() {
        assertAnswer(TIGHT, GEOMETRY, tight().wire("0.010 in").bench(passed("b", "g").wire("some")).in());
        assertAnswer(BLOCKED, BENCH, tight().wire("0.010 in").bench(didNotPass("b", "g").wire("some")).in());
    }

    @Test
    void passGoingInSaysNothingOfComingOut() {
        assertAnswer(TIGHT, GEOMETRY, tight().bench(passed("b", "g")).out());
        assertAnswer(FITS, BENCH, tight().bench(passed("b", "g").covers(Phase.IN, Phase.OUT)).out());
    }

    @Test
    void failureGoingInCarriesOverToComingOut() {
        assertAnswer(BLOCKED, BENCH, tight().bench(didNotPass("b", "g")).out());
        assertAnswer(TIGHT, GEOMETRY, tight().bench(didNotPass("b", "g").covers(Phase.OUT)).in());
    }

    @Test
    void claimedYesAgainstAFailureIsTightWithAConflict() {
        PhaseAnswer answer = passage(balloon("1.768 mm").claim(minimumLumen("0.070 in").kinds(GUIDE_CATHETER)),
                guide("g", "0.070 in")).bench(didNotPass("b", "g")).in();
        assertAnswer(TIGHT, CLAIM, answer);
        assertEquals(List.of(ReasonCode.CLAIM_AGAINST_BENCH), conflicts(answer));
    }

    @Test
    void claimedNoStandsAgainstAPass() {
        PhaseAnswer answer = passage(balloon("1 mm").claim(notCompatible().devices("g")), guide("g", "0.070 in"))
                .bench(passed("b", "g")).in();
        assertAnswer(BLOCKED, CLAIM, answer);
        assertEquals(List.of(ReasonCode.NO_AGAINST_GEOMETRY, ReasonCode.CLAIM_AGAINST_BENCH), conflicts(answer));
    }

    @Test
    void claimedNoIsNotContradictedByABenchThatDisagreesWithItself() {
        PhaseAnswer answer = passage(balloon("1.768 mm").claim(notCompatible().devices("g")), guide("g", "0.070 in"))
                .bench(passed("b", "g"), didNotPass("b", "g")).in();
        assertEquals(List.of(ReasonCode.BENCH_RESULTS_DISAGREE), conflicts(answer));
    }

    @Test
    void claimAndBenchThatAgreeShowNoConflict() {
        PhaseAnswer answer = passage(balloon("1.768 mm").claim(minimumLumen("0.070 in").kinds(GUIDE_CATHETER)),
                guide("g", "0.070 in")).bench(passed("b", "g")).in();
        assertAnswer(FITS, CLAIM, answer);
        assertEquals(List.of(), conflicts(answer));
    }

    private static SampleQuestion tight() {
        return passage(balloon("1.768 mm"), guide("g", "0.070 in"));
    }

    private static SampleQuestion roomy() {
        return passage(balloon("1 mm"), guide("g", "0.070 in"));
    }

    private static SampleQuestion thick() {
        return passage(balloon("1.8 mm"), guide("g", "0.070 in"));
    }

    private static SampleDevice balloon(String profile) {
        return rod("b", BALLOON_CATHETER, "142 cm", profile);
    }

    private static void assertAnswer(Verdict verdict, Authority authority, PhaseAnswer answer) {
        assertEquals(verdict + " by " + authority, answer.verdict() + " by " + answer.authority(),
                () -> answer.reasons().toString());
    }

    private static List<ReasonCode> conflicts(PhaseAnswer answer) {
        return answer.reasons().stream().map(Reason::code).filter(c -> c.weight() == ReasonCode.Weight.CONFLICT)
                .toList();
    }
}
