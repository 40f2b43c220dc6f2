/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.function.UnaryOperator;

import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Nothing that makes a bend harder to pass improves its verdict. */
class BendLawsTest {
    private static final int CASES = 400;

    @Test
    void generatorBringsUpEveryVerdictOfKnownFigures() {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        Cases.check(CASES, random -> counts.merge(RandomBend.any(random).verdict(), 1, Integer::sum));
        for (Verdict verdict : new Verdict[] { Verdict.FITS, Verdict.TIGHT, Verdict.BLOCKED }) {
            assertTrue(counts.getOrDefault(verdict, 0) > CASES / 20, counts.toString());
        }
    }

    @Test
    void thickerPartNeverImproves() {
        neverImproves(random -> bent -> bent.thicker(change(random)));
    }

    @Test
    void longerPartNeverImproves() {
        neverImproves(random -> bent -> bent.longer(change(random)));
    }

    @Test
    void narrowerLumenNeverImproves() {
        neverImproves(random -> bent -> bent.narrower(change(random)));
    }

    @Test
    void sharperBendNeverImproves() {
        neverImproves(random -> bent -> bent.sharper(10 * change(random)));
    }

    @Test
    void moreInTheLumenNeverImproves() {
        neverImproves(random -> bent -> bent.fuller(change(random)));
    }

    @Test
    void widerSpansNeverTurnDoubtIntoFits() {
        Cases.check(CASES, random -> {
            RandomBend bent = RandomBend.any(random);
            Verdict wider = bent.vaguer(change(random)).verdict();
            assertTrue(bent.verdict() == Verdict.FITS || wider != Verdict.FITS, bent.toString());
        });
    }

    private static int change(Random random) {
        return 1 + random.nextInt(random.nextBoolean() ? 5 : 500);
    }

    private static void neverImproves(Function<Random, UnaryOperator<RandomBend>> change) {
        Cases.check(CASES, random -> {
            RandomBend bent = RandomBend.any(random);
            RandomBend harder = change.apply(random).apply(bent);
            assertTrue(harder.verdict().compareTo(bent.verdict()) >= 0,
                    () -> bent + " " + bent.verdict() + " became " + harder + " " + harder.verdict());
        });
    }
}
