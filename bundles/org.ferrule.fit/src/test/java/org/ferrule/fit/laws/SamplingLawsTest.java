/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.laws.RandomFigure.Interval;
import org.ferrule.fit.laws.RandomSection.Use;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Parts drawn from within the intervals go through wherever the worst case says so: diameters are drawn station by
 * station, and the device is pushed through step by step.
 */
class SamplingLawsTest {
    private static final int PARTS = 5;

    @Test
    void noPartContradictsAWorstCaseThatFits() {
        assertTrue(simulated(400) > 100, "enough passages that fit");
    }

    @Test
    @Tag("slow")
    void noPartContradictsAWorstCaseThatFitsInMany() {
        assertTrue(simulated(20_000) > 5000, "enough passages that fit");
    }

    private static int simulated(int cases) {
        int[] simulated = new int[1];
        Cases.check(cases, random -> {
            RandomPassage passage = RandomPassages.known(random);
            for (Phase phase : Phase.values()) {
                if (passage.answer().in(phase).geometry() == Verdict.FITS) {
                    push(passage, phase, random);
                    simulated[0]++;
                }
            }
        });
        return simulated[0];
    }

    private static void push(RandomPassage passage, Phase phase, Random random) {
        for (int part = 0; part < PARTS; part++) {
            double[] lumen = drawnLumen(passage, random);
            double[] device = drawnDevice(passage, phase, random);
            for (int travel = 0; travel < passage.travel(); travel++) {
                assertGoes(passage, lumen, device, travel);
            }
        }
    }

    /** With the leading end at a step, every later part of the device lies as far behind it in the lumen. */
    private static void assertGoes(RandomPassage passage, double[] lumen, double[] device, int travel) {
        boolean tipFirst = passage.direction() == Direction.TIP_FIRST;
        for (int behind = 0; behind < Math.min(device.length, travel + 1); behind++) {
            int station = travel - behind;
            if (station < lumen.length) {
                double room = lumen[tipFirst ? station : lumen.length - 1 - station]
                        - device[tipFirst ? behind : device.length - 1 - behind];
                assertTrue(room >= -1, "overlap of " + -room + " at travel " + travel + ", station " + station);
            }
        }
    }

    /** One diameter for each step, from the middle of it. */
    private static double[] drawnLumen(RandomPassage passage, Random random) {
        double[] drawn = new double[passage.boreLength()];
        for (RandomSection section : passage.bore()) {
            for (int x = section.from(); x < section.to(); x++) {
                drawn[x] = draw(middle(passage, section, x), random);
            }
        }
        return drawn;
    }

    private static double[] drawnDevice(RandomPassage passage, Phase phase, Random random) {
        double[] drawn = new double[passage.shaftLength()];
        for (RandomSection section : passage.shaft()) {
            for (int s = section.from(); s < section.to(); s++) {
                drawn[s] = drawOutline(passage, section, s, phase, random);
                if (passage.port() != RandomPassage.NONE && s >= passage.port()) {
                    drawn[s] += draw(interval(passage, passage.wire()), random);
                }
            }
        }
        return drawn;
    }

    private static double drawOutline(RandomPassage passage, RandomSection section, int s, Phase phase,
            Random random) {
        if (section.use() == Use.PLAIN) {
            return draw(middle(passage, section, s), random);
        }
        if (section.use() == Use.STATED && phase == Phase.OUT) {
            return draw(interval(passage, section.end()), random);
        }
        double folded = draw(interval(passage, section.start()), random);
        boolean grows = section.use() == Use.GROWS && phase == Phase.OUT;
        double most = 0.1 + passage.rules().growthPercent() / 100.0;
        return grows ? folded * (1.05 + random.nextDouble() * (most - 0.05)) : folded;
    }

    private static Interval middle(RandomPassage passage, RandomSection section, int station) {
        double share = (station - section.from() + 0.5) / (section.to() - section.from());
        return interval(passage, section.start()).towards(interval(passage, section.end()), share);
    }

    private static Interval interval(RandomPassage passage, RandomFigure figure) {
        return figure.interval(passage.rules().spanBelow(), passage.rules().spanAbove());
    }

    /** Often at an end of the interval, where a contradiction would show first. */
    private static double draw(Interval interval, Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> interval.low();
            case 1 -> interval.high();
            default -> interval.low() + random.nextDouble() * (interval.high() - interval.low());
        };
    }
}
