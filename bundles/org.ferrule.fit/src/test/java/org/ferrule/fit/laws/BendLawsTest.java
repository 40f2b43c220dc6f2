/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.function.UnaryOperator;

import org.ferrule.fit.check.BendCheck;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Nothing that makes a bend harder to pass improves its verdict. */
class BendLawsTest {
    private static final int CASES = 400;

    /** Figures in micrometres: two rigid sections that touch, a bent lumen, and perhaps something in it. */
    private record Bent(int first, int firstLength, int second, int secondLength, int lumen, int radius, int inside,
            int span) {
        static Bent any(Random random) {
            int lumen = 1000 + random.nextInt(1200);
            return new Bent(500 + random.nextInt(lumen - 500), 500 + random.nextInt(9000),
                    500 + random.nextInt(lumen - 500), 500 + random.nextInt(9000), lumen,
                    500 + random.nextInt(random.nextBoolean() ? 3000 : 40_000),
                    random.nextBoolean() ? 0 : 100 + random.nextInt(500), random.nextInt(60));
        }

        Verdict verdict() {
            SampleDevice part = device("d", DeviceKind.ROTATIONAL_BURR).length("135 cm")
                    .section("first", "0 mm", mm(firstLength), mm(first)).rigid()
                    .section("second", mm(firstLength), mm(firstLength + secondLength), mm(second)).rigid();
            SampleQuestion question = passage(part, SampleDevice.guide("g", mm(lumen))).reach("10 cm")
                    .bentLumen(mm(radius)).under(TestRules.exact().spans(mm(span), mm(span)));
            SampleQuestion asked = inside == 0 ? question
                    : question.beside(SampleDevice.rod("o", DeviceKind.MICROCATHETER, "135 cm", mm(inside)), "5 cm");
            return new BendCheck().check(asked.question(), Phase.IN).verdict();
        }

        private static String mm(int micrometres) {
            return micrometres / 1000 + "." + String.format(Locale.ROOT, "%03d", micrometres % 1000) + " mm";
        }

        Bent thicker(int by) {
            return new Bent(first + by, firstLength, second + by, secondLength, lumen, radius, inside, span);
        }

        Bent longer(int by) {
            return new Bent(first, firstLength + by, second, secondLength, lumen, radius, inside, span);
        }

        Bent narrower(int by) {
            return new Bent(first, firstLength, second, secondLength, Math.max(1, lumen - by), radius, inside, span);
        }

        Bent sharper(int by) {
            return new Bent(first, firstLength, second, secondLength, lumen, Math.max(1, radius - by), inside, span);
        }

        Bent fuller(int by) {
            return new Bent(first, firstLength, second, secondLength, lumen, radius, inside + by, span);
        }

        Bent vaguer(int by) {
            return new Bent(first, firstLength, second, secondLength, lumen, radius, inside, span + by);
        }
    }

    @Test
    void generatorBringsUpEveryVerdictOfKnownFigures() {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        Cases.check(CASES, random -> counts.merge(Bent.any(random).verdict(), 1, Integer::sum));
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
            Bent bent = Bent.any(random);
            Verdict wider = bent.vaguer(change(random)).verdict();
            assertTrue(bent.verdict() == Verdict.FITS || wider != Verdict.FITS, bent.toString());
        });
    }

    private static int change(Random random) {
        return 1 + random.nextInt(random.nextBoolean() ? 5 : 500);
    }

    private static void neverImproves(Function<Random, UnaryOperator<Bent>> change) {
        Cases.check(CASES, random -> {
            Bent bent = Bent.any(random);
            Bent harder = change.apply(random).apply(bent);
            assertTrue(harder.verdict().compareTo(bent.verdict()) >= 0,
                    () -> bent + " " + bent.verdict() + " became " + harder + " " + harder.verdict());
        });
    }
}
