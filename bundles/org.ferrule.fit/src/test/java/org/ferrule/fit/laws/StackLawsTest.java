/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.BiFunction;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleStack;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.stack.StackAnswer;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Nothing that makes a stack fuller improves it. */
class StackLawsTest {
    private static final int CASES = 20;

    /** Figures in micrometres; no extension when its inner diameter is 0, nothing beside when its diameter is. */
    private record Figures(int guide, int outerTube, int tube, int pushRod, int inner, int beside) {
        static Figures any(Random random) {
            int guide = 1200 + random.nextInt(900);
            int tube = random.nextBoolean() ? 0 : guide - 400 + random.nextInt(200);
            return new Figures(guide, tube + 200, tube, 300 + random.nextInt(200), 500 + random.nextInt(guide - 700),
                    random.nextBoolean() ? 0 : 200 + random.nextInt(500));
        }

        Figures thickerInner(int by) {
            return new Figures(guide, outerTube, tube, pushRod, inner + by, beside);
        }

        Figures narrowerGuide(int by) {
            return new Figures(guide - by, outerTube, tube, pushRod, inner, beside);
        }

        Figures narrowerTube(int by) {
            return new Figures(guide, outerTube, tube == 0 ? 0 : Math.max(1, tube - by), pushRod, inner, beside);
        }

        Figures thickerRod(int by) {
            return new Figures(guide, outerTube, tube, pushRod + by, inner, beside);
        }

        Figures fuller(int by) {
            return new Figures(guide, outerTube, tube, pushRod, inner, beside + by);
        }

        Verdict worst() {
            SampleStack stack = SampleStack.under(TestRules.exact())
                    .level(rod("guide", GUIDE_CATHETER, "100 cm", "3 mm").working("100 cm", mm(guide)), "0 cm");
            if (tube > 0) {
                stack.level(extension(), "5 cm");
            }
            if (beside > 0) {
                stack.beside(rod("beside", GUIDEWIRE, "190 cm", mm(beside)), "12 cm");
            }
            StackAnswer answer = stack.level(rod("inner", MICROCATHETER, "150 cm", mm(inner)), "8 cm").answer();
            return answer.weakest(Phase.IN).orElseThrow().verdict(Phase.IN).orElseThrow();
        }

        private SampleDevice extension() {
            return device("x", GUIDE_EXTENSION).length("150 cm").takesWire("0.2 mm")
                    .section("tube", "0 cm", "25 cm", mm(outerTube))
                    .section("push rod", "25 cm", "150 cm", mm(pushRod))
                    .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                    .bore("0 cm", "25 cm", mm(tube));
        }

        private static String mm(int micrometres) {
            return String.format(Locale.ROOT, "%d.%03d mm", micrometres / 1000, micrometres % 1000);
        }
    }

    @Test
    void generatorBringsUpSeveralVerdicts() {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        check((figures, by) -> {
            counts.merge(figures.worst(), 1, Integer::sum);
            return figures;
        });
        assertTrue(counts.getOrDefault(Verdict.FITS, 0) > 2 && counts.getOrDefault(Verdict.BLOCKED, 0) > 2,
                counts.toString());
    }

    @Test
    void thickerDeviceNeverImproves() {
        check(Figures::thickerInner);
    }

    @Test
    void narrowerGuideNeverImproves() {
        check(Figures::narrowerGuide);
    }

    @Test
    void narrowerTubeNeverImproves() {
        check(Figures::narrowerTube);
    }

    @Test
    void thickerPushRodNeverImproves() {
        check(Figures::thickerRod);
    }

    @Test
    void moreBesideNeverImproves() {
        check(Figures::fuller);
    }

    private static void check(BiFunction<Figures, Integer, Figures> change) {
        Cases.check(CASES, random -> {
            Figures figures = Figures.any(random);
            Figures harder = change.apply(figures, 1 + random.nextInt(300));
            Verdict before = figures.worst();
            Verdict after = harder.worst();
            assertTrue(after.compareTo(before) >= 0, figures + " " + before + " became " + harder + " " + after);
        });
    }
}
