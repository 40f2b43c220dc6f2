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
import org.ferrule.fit.engineering.opinion.NotComparableException;
import org.ferrule.fit.engineering.opinion.SecondOpinion;
import org.ferrule.fit.engineering.opinion.SecondOpinions;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Parts drawn at random and pushed through by another method never contradict the lanes, alone and beside others. */
class SecondOpinionLawsTest {
    private int compared;

    @Test
    void neverContradictsTheLanes() {
        Cases.check(150, random -> compare(random, 20));
        assertTrue(compared > 150, "enough of them compared: " + compared);
    }

    @Test
    @Tag("slow")
    void neverContradictsTheLanesInThousands() {
        Cases.check(10_000, random -> compare(random, 50));
        assertTrue(compared > 10_000, "enough of them compared: " + compared);
    }

    private void compare(Random random, int samples) {
        compare(RandomPassages.known(random).question(LengthUnit.MILLIMETRE).question(), random, samples);
    }

    private void compare(FitQuestion question, Random random, int samples) {
        for (Phase phase : Phase.values()) {
            try {
                SecondOpinion opinion = SecondOpinions.of(question, phase, random.nextLong(), samples);
                assertEquals(List.of(), opinion.contradictions(), opinion.toString());
                compared++;
            } catch (NotComparableException e) {
                assertTrue(e.getMessage().contains("never meets"), e.getMessage());
            }
        }
    }

    @Test
    void neverContradictsTheLanesBesideOthers() {
        Cases.check(25, random -> compare(beside(random), random, 5));
        assertTrue(compared > 25, "enough of them compared: " + compared);
    }

    @Test
    @Tag("slow")
    void neverContradictsTheLanesBesideOthersInThousands() {
        Cases.check(4_000, random -> compare(beside(random), random, 20));
        assertTrue(compared > 4_000, "enough of them compared: " + compared);
    }

    /** Beside one or two others, and now and then through an extension. */
    private static FitQuestion beside(Random random) {
        RandomShared shared = RandomShared.known(random);
        return (random.nextInt(3) > 0 ? shared.question(LengthUnit.MILLIMETRE)
                : RandomExtension.in(shared.passage(), random).question(shared, LengthUnit.MILLIMETRE)).question();
    }

    @Test
    void neverContradictsTheLanesInBends() {
        Cases.check(200, random -> compare(RandomBend.any(random).question().question(), random, 3));
        assertTrue(compared > 200, "enough of them compared: " + compared);
    }

    @Test
    @Tag("slow")
    void neverContradictsTheLanesInBendsInThousands() {
        Cases.check(5_000, random -> compare(RandomBend.any(random).question().question(), random, 20));
        assertTrue(compared > 5_000, "enough of them compared: " + compared);
    }
}
