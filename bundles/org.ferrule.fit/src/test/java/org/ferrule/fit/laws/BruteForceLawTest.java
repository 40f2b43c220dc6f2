/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** The solver against a comparison of every station with every station. */
class BruteForceLawTest {
    /** Tapers are rounded to a third of a nanometre, growth too. */
    private static final double ROUNDING = 6;
    private static final int CASES = 400;

    @Test
    void verdictAgrees() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.known(random);
            for (Phase phase : Phase.values()) {
                assertEquals(verdict(passage, BruteForce.of(passage, phase), phase),
                        passage.answer().in(phase).geometry());
            }
        });
    }

    private static Verdict verdict(RandomPassage passage, BruteForce force, Phase phase) {
        if (force.overlap(phase).isPresent()) {
            return Verdict.BLOCKED;
        }
        double required = RandomFigure.length(passage.rules().required()).thirdNanometres();
        return force.leastWorst() >= required - 1e-6 ? Verdict.FITS : Verdict.TIGHT;
    }

    @Test
    void leastClearanceAgrees() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.known(random);
            PhaseAnswer answer = passage.answer().in();
            if (answer.geometry() != Verdict.BLOCKED && answer.clearance().isPresent()) {
                assertEquals(BruteForce.of(passage, Phase.IN).leastWorst(),
                        answer.clearance().get().worst().thirdNanometres(), ROUNDING);
            }
        });
    }

    @Test
    void placeOfTheStopAgrees() {
        Cases.check(2 * CASES, random -> {
            RandomPassage passage = RandomPassages.known(random);
            for (Phase phase : Phase.values()) {
                OptionalInt overlap = BruteForce.of(passage, phase).overlap(phase);
                if (overlap.isPresent()) {
                    assertStop(passage, passage.answer().in(phase), overlap.getAsInt(), phase);
                }
            }
        });
    }

    /** Inside a taper the stop lies up to a step before the first station that overlaps, or after the last one. */
    private static void assertStop(RandomPassage passage, PhaseAnswer answer, int overlap, Phase phase) {
        double steps = (double) travel(passage, answer).thirdNanometres() / RandomPassage.STEP.thirdNanometres();
        double early = phase == Phase.IN ? overlap - steps : steps - overlap;
        assertTrue(early > -1e-6 && early < 1 + 1e-6,
                phase + " stop after " + steps + " steps, brute force " + overlap);
    }

    private static Length travel(RandomPassage passage, PhaseAnswer answer) {
        Length x = answer.limiting().get().lumenStation();
        Length s = answer.limiting().get().deviceStation();
        return passage.direction() == Direction.TIP_FIRST ? x.plus(s)
                : RandomPassage.STEP.times(passage.shaftLength() + passage.boreLength()).minus(x).minus(s);
    }

    @Test
    void reachIsTheTravelBeyondTheLumen() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.known(random);
            PhaseAnswer answer = passage.answer().in();
            Length travelled = answer.geometry() == Verdict.BLOCKED ? travel(passage, answer)
                    : RandomPassage.STEP.times(passage.travel());
            Length expected = passage.direction() == Direction.TIP_FIRST
                    ? travelled.minus(RandomPassage.STEP.times(passage.boreLength()))
                    : RandomPassage.STEP.times(passage.shaftLength()).minus(travelled);
            assertEquals(expected, answer.reach().get());
        });
    }
}
