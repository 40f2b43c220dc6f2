/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.ferrule.fit.verdict.Verdict.BLOCKED;
import static org.ferrule.fit.verdict.Verdict.FITS;
import static org.ferrule.fit.verdict.Verdict.TIGHT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Verdicts of intervals: worst decides on "fits", the centre on "blocked", and an assumed centre only by its best. */
class IntervalTest {

    @ParameterizedTest(name = "{1} in {0}: {2}")
    @CsvSource({
        // outer ±, inner ±: worst 0.010, 0.009 where 0.010 is required
        "1.000 mm ±0.010, 0.970 mm ±0.010, FITS",
        "1.000 mm ±0.010, 0.971 mm ±0.010, TIGHT",
        // nominal 0 is tight, less is blocked, however good the best is
        "1.000 mm ±0.010, 1.000 mm ±0.010, TIGHT",
        "1.000 mm ±0.010, 1.001 mm ±0.010, BLOCKED",
        "1.000 mm ±0.500, 1.001 mm ±0.500, BLOCKED",
        // ends that lean to one side
        "1.000 mm +0.05/-0.01, 0.970 mm +0.01/-0.05, FITS",
        "1.000 mm +0.01/-0.02, 0.970 mm +0.01/-0.05, TIGHT",
        // a range states ends and no centre: blocked only when even the best overlaps
        "0.98..1.02 mm, 0.95..0.97 mm, FITS",
        "0.98..1.02 mm, 1.02..1.06 mm, TIGHT",
        "0.98..1.02 mm, 1.03..1.06 mm, BLOCKED",
        // one assumed centre is enough to ask for the best
        "1.000 mm ±0.010, 1.005..1.015 mm, TIGHT",
        "1.000 mm ±0.010, 1.011..1.015 mm, BLOCKED" })
    void statedIntervals(String lumen, String device, String verdict) {
        TestRules rules = TestRules.exact().required("0.010 mm");
        assertEquals(verdict, passage(rod("m", MICROCATHETER, "135 cm", device), guide("g", lumen)).under(rules).in()
                .verdict().name());
    }

    @ParameterizedTest(name = "{1} in {0}: {2} {3} {4}")
    @CsvSource({
        // spans of 0.02 below and 0.03 above: lumen low - device high, centres, lumen high - device low
        "1.00 mm, 0.90 mm, 0.05, 0.10, 0.15",
        "1.00 mm nom, 0.90 mm nom, 0.05, 0.10, 0.15",
        "1.00 mm min, 0.90 mm max, 0.10, 0.15, 0.20",
        "1.00 mm max, 0.90 mm min, 0.00, 0.05, 0.10",
        "0.99..1.01 mm, 0.89..0.91 mm, 0.08, 0.10, 0.12" })
    void lanes(String lumen, String device, String worst, String nominal, String best) {
        TestRules rules = TestRules.exact().spans("0.02 mm", "0.03 mm");
        Clearance clearance = passage(rod("m", MICROCATHETER, "135 cm", device), guide("g", lumen)).under(rules).in()
                .clearance().get();
        assertEquals(new Clearance(length(worst + " mm"), length(nominal + " mm"), length(best + " mm")), clearance);
    }

    @Test
    void minimumLumenWithAnAssumedCentreIsTightWhereItsCentreOverlaps() {
        TestRules rules = TestRules.exact().spans("0.02 mm", "0.03 mm");
        // lumen 1.00 to 1.05 mm, device 1.03 to 1.08 mm: nominal -0.03, best +0.02
        assertEquals(TIGHT, passage(rod("m", MICROCATHETER, "135 cm", "1.05 mm"), guide("g", "1.00 mm min"))
                .under(rules).in().verdict());
        assertEquals(BLOCKED, passage(rod("m", MICROCATHETER, "135 cm", "1.08 mm"), guide("g", "1.00 mm min"))
                .under(rules).in().verdict());
    }

    @Test
    void statedCentreBlocksWhereItOverlaps() {
        TestRules rules = TestRules.exact().spans("0.02 mm", "0.03 mm");
        assertEquals(BLOCKED, passage(rod("m", MICROCATHETER, "135 cm", "1.05 mm"), guide("g", "1.02 mm")).under(rules)
                .in().verdict());
    }

    @Test
    void assumedSpansAreShown() {
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm"), guide("g", "1.00 mm ±0.01"))
                .under(TestRules.usual()).in();
        assertEquals(FITS, answer.verdict());
        assertEquals(1, answer.reasons().stream().filter(r -> r.code() == ReasonCode.SPAN_ASSUMED).count());
    }

    @Test
    void figuresStatedInFullAssumeNothing() {
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm ±0.01"), guide("g", "1.00 mm ±0.01"))
                .under(TestRules.usual()).in();
        assertFalse(answer.reasons().stream().anyMatch(r -> r.code() == ReasonCode.SPAN_ASSUMED));
    }

    @Test
    void conditionWithoutMuchRoomNamesWorstAndRequiredClearance() {
        PhaseAnswer answer = passage(rod("m", MICROCATHETER, "135 cm", "0.98 mm"), guide("g", "1.00 mm")).in();
        assertEquals(Reason.of(ReasonCode.LESS_THAN_REQUIRED, Reason.clearance(length("0.02 mm")),
                Reason.clearance(length("0.025 mm")), Reason.name("shaft"), Reason.name("bore 1")),
                answer.reasons().get(0));
    }
}
