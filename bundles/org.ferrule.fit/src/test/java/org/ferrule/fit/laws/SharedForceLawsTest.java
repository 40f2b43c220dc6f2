/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The solver beside others against a comparison of every step with every step. */
class SharedForceLawsTest {
    /** Tapers, growth and circles are rounded to a third of a nanometre each. */
    private static final double ROUNDING = 12;
    /** Where three discs taper, the solver takes a place in strips, and the comparison sees whole steps only. */
    private static final double BENT = 90_000;
    private static final int CASES = 25;
    private static final int MANY_CASES = 5000;

    @Test
    void verdictAgrees() {
        Cases.check(CASES, SharedForceLawsTest::assertVerdict);
    }

    @Test
    @Tag("slow")
    void verdictAgreesInMany() {
        Cases.check(MANY_CASES, SharedForceLawsTest::assertVerdict);
    }

    private static void assertVerdict(Random random) {
        RandomShared shared = RandomShared.known(random);
        for (Phase phase : Phase.values()) {
            SharedForce force = SharedForce.of(shared, phase);
            PhaseAnswer answer = shared.answer().in(phase);
            List<Verdict> possible = verdicts(shared, force);
            assertTrue(possible.contains(answer.geometry()),
                    answer.geometry() + " is not one of " + possible + ": least "
                            + force.leastWorst() + " to " + force.mostWorst() + ", overlap " + force.deepestSure()
                            + " to "
                            + force.deepestPossible() + ", answer " + answer.clearance());
        }
    }

    /** The verdict; several where rounding against the device, or a circle that is not proved, decides. */
    private static List<Verdict> verdicts(RandomShared shared, SharedForce force) {
        double slack = force.bends() ? BENT : ROUNDING;
        if (force.deepestSure() > slack) {
            return List.of(Verdict.BLOCKED);
        }
        List<Verdict> possible = new ArrayList<>();
        if (force.deepestPossible() > -ROUNDING) {
            possible.add(Verdict.BLOCKED);
        }
        double required = RandomFigure.length(shared.passage().rules().required()).thirdNanometres();
        if (force.mostWorst() - required > -ROUNDING) {
            possible.add(Verdict.FITS);
        }
        if (force.leastWorst() - required < slack) {
            possible.add(Verdict.TIGHT);
        }
        return possible;
    }
}
