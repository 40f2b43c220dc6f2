/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The solver against a comparison of every station with every station. */
class BruteForceLawsTest {
    /** Tapers are rounded to a third of a nanometre, growth too. */
    private static final double ROUNDING = 6;
    private static final int CASES = 200;
    private static final int MANY_CASES = 20_000;

    @Test
    void verdictAgrees() {
        Cases.check(CASES, BruteForceLawsTest::assertVerdict);
    }

    @Test
    @Tag("slow")
    void verdictAndStopAgreeInMany() {
        Cases.check(MANY_CASES, random -> {
            assertVerdict(random);
            assertStops(random);
        });
    }

    private static void assertVerdict(Random random) {
        RandomPassage passage = RandomPassages.known(random);
        for (Phase phase : Phase.values()) {
            List<Verdict> possible = verdicts(passage, BruteForce.of(passage, phase));
            Verdict verdict = passage.answer().in(phase).geometry();
            assertTrue(possible.contains(verdict), verdict + " is not " + possible);
        }
    }

    /** The verdict; several where rounding against the device decides. */
    private static List<Verdict> verdicts(RandomPassage passage, BruteForce force) {
        if (force.sureOverlap().isPresent()) {
            return List.of(Verdict.BLOCKED);
        }
        double spare = force.leastWorst() - RandomFigure.length(passage.rules().required()).thirdNanometres();
        Verdict verdict = spare > -1e-6 ? Verdict.FITS : Verdict.TIGHT;
        if (force.possibleOverlap().isPresent()) {
            return List.of(verdict, Verdict.TIGHT, Verdict.BLOCKED);
        }
        return verdict == Verdict.FITS && spare < ROUNDING ? List.of(verdict, Verdict.TIGHT) : List.of(verdict);
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
        Cases.check(2 * CASES, BruteForceLawsTest::assertStops);
    }

    private static void assertStops(Random random) {
        RandomPassage passage = RandomPassages.known(random);
        for (Phase phase : Phase.values()) {
            BruteForce force = BruteForce.of(passage, phase);
            if (force.sureOverlap().isPresent()) {
                assertStop(passage, passage.answer().in(phase), force, phase);
            }
        }
    }

    /** Inside a taper the stop lies up to a step before the first station that overlaps, or after the last one. */
    private static void assertStop(RandomPassage passage, PhaseAnswer answer, BruteForce force, Phase phase) {
        double steps = (double) travel(passage, answer).thirdNanometres() / RandomPassage.STEP.thirdNanometres();
        int sign = phase == Phase.IN ? 1 : -1;
        double beforeSure = sign * (force.sureOverlap().getAsInt() - steps);
        double beforePossible = sign * (force.possibleOverlap().getAsInt() - steps);
        assertTrue(beforeSure > -1e-6 && beforePossible < 1, phase + " stop after " + steps + " steps, stations from "
                + force.possibleOverlap() + ", surely from " + force.sureOverlap());
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
