/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FirstContacts;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** First contacts say what the solver's geometry says, and what a comparison of every station with every station says. */
class FirstContactLawsTest {
    private static final FitSolver GEOMETRY = FitSolver.with(List.of(new PassageCheck()), List.of());
    /** Tapers are rounded to a third of a nanometre, growth too. */
    private static final double ROUNDING = 6;
    private static final int CASES = 300;
    private static final int MANY_CASES = 20_000;
    private int stops;

    @Test
    void stopIsWhereTheSolverBlocks() {
        Cases.check(CASES, this::assertStop);
        assertTrue(stops > CASES / 10, "enough stops: " + stops);
    }

    @Test
    @Tag("slow")
    void stopIsWhereTheSolverBlocksInMany() {
        Cases.check(MANY_CASES, this::assertStop);
    }

    private void assertStop(Random random) {
        FitQuestion question = RandomPassages.any(random).question(LengthUnit.MILLIMETRE).question();
        FirstContacts contacts = FirstContacts.of(question);
        PhaseAnswer answer = GEOMETRY.answer(question).in(Phase.IN);
        assertEquals(answer.geometry() == Verdict.BLOCKED, contacts.stop().isPresent());
        contacts.stop().ifPresent(stop -> {
            assertEquals(answer.limiting().orElseThrow(), stop.at());
            assertEquals(answer.clearance().orElseThrow(), stop.clearance());
            assertTrue(contacts.worst().orElseThrow().travel().compareTo(stop.travel()) <= 0);
            stops++;
        });
        if (answer.geometry() == Verdict.FITS) {
            assertTrue(contacts.worst().isEmpty() && contacts.unknown().isEmpty());
        }
    }

    @Test
    void worstCaseMeetsTheWallWhereEveryStationSaysSo() {
        Cases.check(CASES, FirstContactLawsTest::assertWorst);
    }

    @Test
    @Tag("slow")
    void worstCaseMeetsTheWallWhereEveryStationSaysSoInMany() {
        Cases.check(MANY_CASES, FirstContactLawsTest::assertWorst);
    }

    private static void assertWorst(Random random) {
        RandomPassage passage = RandomPassages.known(random);
        FirstContacts contacts = FirstContacts.of(passage.question(LengthUnit.MILLIMETRE).question());
        double least = BruteForce.of(passage, Phase.IN).leastWorst();
        if (Math.abs(least) > ROUNDING) {
            assertEquals(least < 0, contacts.worst().isPresent(), "least worst clearance " + least);
        }
        contacts.worst().ifPresent(worst -> assertTrue(worst.clearance().worst().compareTo(Length.ZERO) <= 0));
    }
}
