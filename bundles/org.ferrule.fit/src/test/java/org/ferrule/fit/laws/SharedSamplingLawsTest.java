/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.laws.RandomFigure.Interval;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Parts drawn from within the intervals find room beside each other wherever the worst case says so. */
class SharedSamplingLawsTest {
    private static final double ROUNDING = 12;

    @Test
    void noPartContradictsAWorstCaseThatFits() {
        assertTrue(simulated(60) > 20, "enough passages that fit");
    }

    @Test
    @Tag("slow")
    void noPartContradictsAWorstCaseThatFitsInMany() {
        assertTrue(simulated(3000) > 1000, "enough passages that fit");
    }

    private static int simulated(int cases) {
        int[] simulated = new int[1];
        Cases.check(cases, random -> {
            RandomShared shared = RandomShared.known(random);
            for (Phase phase : Phase.values()) {
                if (shared.answer().in(phase).geometry() == Verdict.FITS) {
                    SharedMeetings.visit(shared, phase, (lumen, discs, surely) -> {
                        // what only touches the lumen's mouth at the end of the travel has not come in
                        if (surely) {
                            assertRoom(lumen, discs, random);
                        }
                    });
                    simulated[0]++;
                }
            }
        });
        return simulated[0];
    }

    private static void assertRoom(Interval lumen, List<Interval> discs, Random random) {
        List<Double> drawn = discs.stream().map(d -> draw(d, random)).toList();
        double room = draw(lumen, random);
        double inLine = drawn.stream().mapToDouble(d -> d).sum();
        assertTrue(inLine <= room || RimPacking.atLeast(drawn) <= room + ROUNDING, drawn + " in " + room);
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
