/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Nothing that makes a passage harder improves its verdict, and doubt never becomes "fits". */
class MonotonyLawsTest {
    private static final int CASES = 200;

    @Test
    void generatorBringsUpEveryVerdict() {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        Cases.check(CASES, random -> {
            FitAnswer answer = RandomPassages.any(random).answer();
            counts.merge(answer.in().verdict(), 1, Integer::sum);
            counts.merge(answer.out().verdict(), 1, Integer::sum);
        });
        for (Verdict verdict : Verdict.values()) {
            assertTrue(counts.getOrDefault(verdict, 0) > CASES / 20, counts.toString());
        }
    }

    @Test
    void thickerDeviceNeverImprovesAVerdict() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.any(random);
            assertNotBetter(passage.answer(), passage.withShaft(f -> f.plus(change(random))).answer());
        });
    }

    @Test
    void narrowerLumenNeverImprovesAVerdict() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.any(random);
            assertNotBetter(passage.answer(), passage.withBore(f -> f.plus(-change(random))).answer());
        });
    }

    @Test
    void moreRequiredClearanceNeverImprovesAVerdict() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.any(random);
            RandomPassage.RandomRules rules = passage.rules();
            assertNotBetter(passage.answer(), passage.withRules(new RandomPassage.RandomRules(rules.spanBelow(),
                    rules.spanAbove(), rules.required() + change(random), rules.growthPercent())).answer());
        });
    }

    @Test
    void ownWireNeverImprovesAVerdict() {
        Cases.check(CASES, random -> {
            RandomPassage alone = RandomPassages.any(random).withPort(RandomPassage.NONE);
            assertNotBetter(alone.answer(), alone.withPort(random.nextInt(alone.shaftLength() + 1)).answer());
        });
    }

    @Test
    void portFartherDistalNeverImprovesAVerdict() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.any(random);
            int port = random.nextInt(passage.shaftLength() + 1);
            assertNotBetter(passage.withPort(port).answer(), passage.withPort(random.nextInt(port + 1)).answer());
        });
    }

    @Test
    void moreReachNeverImprovesAVerdict() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.any(random);
            int near = random.nextInt(8);
            int far = near + random.nextInt(8);
            boolean tipFirst = passage.direction() == org.ferrule.fit.passage.Direction.TIP_FIRST;
            assertNotBetter(beyond(passage, tipFirst ? near : far).answer().in().geometry(),
                    beyond(passage, tipFirst ? far : near).answer().in().geometry());
        });
    }

    private static RandomPassage beyond(RandomPassage passage, int beyond) {
        return new RandomPassage(passage.shaft(), passage.bore(), passage.port(), passage.wire(), passage.direction(),
                beyond, passage.rules());
    }

    @Test
    void widerFiguresNeverTurnDoubtIntoFits() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.any(random);
            RandomPassage wider = random.nextBoolean() ? passage.withShaft(f -> f.wider(change(random)))
                    : passage.withBore(f -> f.wider(change(random)));
            assertNoNewFits(passage.answer(), wider.answer());
        });
    }

    @Test
    void widerSpansNeverTurnDoubtIntoFits() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.any(random);
            assertNoNewFits(passage.answer(), passage.withRules(passage.rules().wider(change(random))).answer());
        });
    }

    private static int change(Random random) {
        return random.nextInt(random.nextBoolean() ? 3 : 600);
    }

    private static void assertNotBetter(FitAnswer before, FitAnswer harder) {
        for (Phase phase : Phase.values()) {
            assertNotBetter(before.in(phase).verdict(), harder.in(phase).verdict());
        }
    }

    private static void assertNotBetter(Verdict before, Verdict harder) {
        assertTrue(harder.compareTo(before) >= 0, before + " became " + harder);
    }

    private static void assertNoNewFits(FitAnswer before, FitAnswer wider) {
        for (Phase phase : Phase.values()) {
            PhaseAnswer former = before.in(phase);
            boolean doubtful = former.verdict() != Verdict.FITS;
            assertTrue(!doubtful || wider.in(phase).verdict() != Verdict.FITS, former.verdict() + " became FITS");
        }
    }
}
