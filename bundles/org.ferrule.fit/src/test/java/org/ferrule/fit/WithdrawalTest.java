/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.IMAGING_CATHETER;
import static org.ferrule.fit.device.DeviceKind.STENT_SYSTEM;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
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

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.junit.jupiter.api.Test;

/** Coming out after use: the profile after use counts, stated or assumed, and the answer says where it is caught. */
class WithdrawalTest {

    @Test
    void statedProfileAfterUseIsCaughtAtTheOpening() {
        PhaseAnswer out = passage(rewrapped("0.85 mm", "1.10 mm"), guide("g", "1.00 mm")).reach("10 cm").out();
        assertEquals(BLOCKED, out.verdict());
        assertEquals(Reason.of(ReasonCode.CAUGHT_ON_WITHDRAWAL, distance(length("23 mm")), name("balloon"),
                diameter(length("1.10 mm")), name("bore 1"), diameter(length("1.00 mm"))), out.reasons().get(0));
        assertEquals(length("100 cm"), out.limiting().get().lumenStation());
        assertEquals(length("23 mm"), out.limiting().get().deviceStation());
    }

    @Test
    void goesInBeforeUse() {
        assertEquals(FITS, passage(rewrapped("0.85 mm", "1.10 mm"), guide("g", "1.00 mm")).reach("10 cm").in()
                .verdict());
    }

    @Test
    void deviceThatStaysInsideIsCaughtWhereItLies() {
        PhaseAnswer out = passage(rewrapped("0.85 mm", "1.10 mm"), guide("g", "1.00 mm")).reach("-5 cm").out();
        assertEquals(distance(length("-5 cm")), out.reasons().get(0).arguments().get(0));
    }

    @Test
    void assumedProfileAfterUseIsBlockedOnlyAtItsBest() {
        // 0.85 mm grows to 0.935, 1.02, 1.105 mm
        TestRules rules = TestRules.exact().growth("1.1", "1.2", "1.3");
        assertEquals(FITS, outOf("1.14 mm", rules));
        assertEquals(TIGHT, outOf("1.10 mm", rules));
        assertEquals(TIGHT, outOf("0.935 mm", rules));
        assertEquals(BLOCKED, outOf("0.93 mm", rules));
    }

    private static org.ferrule.fit.verdict.Verdict outOf(String lumen, TestRules rules) {
        return passage(balloon("b", "0.85 mm", "0.5 mm"), guide("g", lumen)).under(rules).reach("10 cm").out()
                .verdict();
    }

    @Test
    void assumedProfileAfterUseIsShown() {
        PhaseAnswer out = passage(balloon("b", "0.85 mm", "0.5 mm"), guide("g", "1.14 mm"))
                .under(TestRules.exact().growth("1.1", "1.2", "1.3")).reach("10 cm").out();
        assertEquals(Reason.of(ReasonCode.AFTER_USE_ASSUMED, name("balloon"), diameter(length("0.935 mm")),
                diameter(length("1.02 mm")), diameter(length("1.105 mm")),
                Reason.source(new SourceRef("house rules of the test", "1", ""))), noteOf(out));
    }

    @Test
    void spansAndGrowthAddUp() {
        // high end 0.85 + 0.10 = 0.95 mm grows to 1.235 mm
        assertEquals(length("1.235 mm"), passage(balloon("b", "0.85 mm", "0.5 mm"), guide("g", "2 mm"))
                .under(TestRules.usual()).reach("10 cm").out().limiting().get().deviceDiameter().high());
    }

    @Test
    void balloonBehindItsExitPortGrowsBesideItsWire() {
        SampleDevice shortPort = device("b", BALLOON_CATHETER).length("142 cm").takesWire("0.3 mm")
                .section("tip", "0 mm", "4 mm", "0.5 mm").folded("balloon", "4 mm", "23 mm", "0.8 mm")
                .section("shaft", "23 mm", "142 cm", "0.5 mm").sidePort("4 mm", "0.4 mm");
        PhaseAnswer out = passage(shortPort, guide("g", "1.5 mm")).under(TestRules.exact().growth("1.1", "1.2", "1.3"))
                .reach("10 cm").out();
        assertEquals(length("1.34 mm"), out.limiting().get().deviceDiameter().high());
        assertEquals(length("0.88 mm").plus(length("0.3 mm")), out.limiting().get().deviceDiameter().low());
        assertEquals(diameter(length("0.88 mm")), noteOf(out).arguments().get(1));
    }

    @Test
    void ruleSetMustSayHowABalloonGrows() {
        TestRules silent = TestRules.silent().spans("0 mm", "0 mm").required("0 mm");
        assertThrows(RuleSetException.class,
                () -> passage(balloon("b", "0.85 mm", "0.5 mm"), guide("g", "2 mm")).under(silent).out());
        assertEquals(FITS, passage(rewrapped("0.85 mm", "1.1 mm"), guide("g", "2 mm")).under(silent).out().verdict());
    }

    @Test
    void growthRuleOfTheKindWinsOverTheGeneralOne() {
        TestRules rules = TestRules.exact().growth("1", "2", "3", BALLOON_CATHETER).growth("1", "1", "1");
        assertEquals(length("2.55 mm"), passage(balloon("b", "0.85 mm", "0.5 mm"), guide("g", "3 mm")).under(rules)
                .out().limiting().get().deviceDiameter().high());
    }

    @Test
    void openEdgeIsACautionForWhatDeploys() {
        SampleDevice stent = balloon("s", "1 mm", "0.5 mm").deploys();
        assertTrue(cautionsOpenEdge(passage(stent, guide("g", "2 mm")).reach("10 cm").out()));
        assertTrue(cautionsOpenEdge(passage(stent, guide("g", "2 mm")).out()), "hub to hub it leaves the lumen");
        assertTrue(!cautionsOpenEdge(passage(stent, guide("g", "2 mm")).reach("10 cm").in()));
        assertTrue(!cautionsOpenEdge(passage(stent, guide("g", "2 mm")).reach("0 cm").out()));
        assertTrue(!cautionsOpenEdge(passage(balloon("b", "1 mm", "0.5 mm"), guide("g", "2 mm")).out()));
    }

    @Test
    void openEdgeIsACautionWhereTheLengthIsNotStated() {
        assertTrue(cautionsOpenEdge(passage(device("s", STENT_SYSTEM).deploys(), guide("g", "2 mm")).out()));
    }

    @Test
    void cautionDoesNotChangeTheVerdict() {
        PhaseAnswer out = passage(balloon("s", "1 mm", "0.5 mm").deploys(), guide("g", "2 mm")).out();
        assertEquals(FITS, out.verdict());
        assertTrue(out.hasCaution());
    }

    @Test
    void deviceThatUseDoesNotChangeComesOutAsItWentIn() {
        SampleDevice imaging = device("i", IMAGING_CATHETER).length("135 cm").section("all", "0 cm", "135 cm", "1 mm");
        assertEquals(passage(imaging, guide("g", "1.1 mm")).in(), passage(imaging, guide("g", "1.1 mm")).out());
    }

    private static boolean cautionsOpenEdge(PhaseAnswer answer) {
        return answer.reasons().stream().anyMatch(r -> r.code() == ReasonCode.OPEN_EDGE);
    }

    private static Reason noteOf(PhaseAnswer out) {
        return out.reasons().stream().filter(r -> r.code() == ReasonCode.AFTER_USE_ASSUMED).findFirst().orElseThrow();
    }

    private static SampleDevice rewrapped(String profile, String after) {
        return device("b", BALLOON_CATHETER).length("142 cm").takesWire("0.014 in")
                .section("tip", "0 mm", "4 mm", "0.43 mm").folded("balloon", "4 mm", "23 mm", profile, after)
                .section("shaft", "23 mm", "142 cm", "0.8 mm").overTheWire("142 cm", "0.016 in");
    }
}
