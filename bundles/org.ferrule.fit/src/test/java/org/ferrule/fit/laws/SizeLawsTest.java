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
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.change.Replacement;
import org.ferrule.fit.engineering.size.Flip;
import org.ferrule.fit.engineering.size.MovableSection;
import org.ferrule.fit.engineering.size.PartnerSizes;
import org.ferrule.fit.engineering.size.RequiredSize;
import org.ferrule.fit.engineering.size.Size;
import org.ferrule.fit.engineering.size.SizeSearch;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A flip is where the verdict changes, the verdict only gets worse, and the unit of the labels does not matter. */
class SizeLawsTest {
    private static final FitSolver SOLVER = FitSolver.standard(List.of());
    private int flips;

    @Test
    void verdictIsOneThingAtAFlipAndAnotherAThirdOfANanometreBeyond() {
        Cases.check(24, this::checkFlips);
        assertTrue(flips > 8, "enough flips: " + flips);
    }

    @Test
    @Tag("slow")
    void verdictIsOneThingAtAFlipAndAnotherAThirdOfANanometreBeyondInMany() {
        Cases.check(2_000, this::checkFlips);
    }

    private void checkFlips(Random random) {
        FitQuestion question = RandomPassages.any(random).question(LengthUnit.MILLIMETRE).question();
        MovableSection section = section(question, random);
        for (PartnerSizes partner : SizeSearch.of(section, List.of(question), SOLVER).partners()) {
            Verdict former = null;
            for (Flip flip : partner.flips()) {
                assertEquals(1, flip.first().distal().minus(flip.last().distal()).thirdNanometres());
                assertEquals(flip.below(), verdict(section, question, flip.last(), partner.phase()));
                assertEquals(flip.above(), verdict(section, question, flip.first(), partner.phase()));
                assertEquals(section.isBore(), flip.above().compareTo(flip.below()) < 0, "gets worse as it should");
                assertTrue(former == null || former == flip.below());
                former = flip.above();
                flips++;
            }
        }
    }

    private static MovableSection section(FitQuestion question, Random random) {
        if (random.nextBoolean()) {
            int index = random.nextInt(question.inner().device().sections().size());
            return MovableSection.of(new Place.Shaft(question.inner().device(), index));
        }
        int index = random.nextInt(question.lumen().sections().size());
        return MovableSection.of(new Place.Bore(question.outer().device(), question.lumen(), index));
    }

    private static Verdict verdict(MovableSection section, FitQuestion question, Size size, Phase phase) {
        Length by = size.distal().minus(section.printed().distal());
        Device moved = section.movedBy(by);
        return SOLVER.answer(Replacement.of(section.place().device(), moved, question.rules()).in(question)).in(phase)
                .verdict();
    }

    @Test
    void noSizeBetweenTwoFlipsHasAnotherVerdict() {
        Cases.check(5, random -> {
            FitQuestion question = RandomPassages.any(random).question(LengthUnit.MILLIMETRE).question();
            MovableSection section = section(question, random);
            RequiredSize required = SizeSearch.of(section, List.of(question), SOLVER);
            PartnerSizes partner = required.partners().get(0);
            for (int i = 0; i < 20; i++) {
                long range = required.most().distal().minus(required.least().distal()).thirdNanometres() / 16;
                Length distal = required.least().distal().plus(new Length((long) (random.nextDouble() * range)));
                Verdict expected = partner.flips().stream().filter(f -> f.last().distal().compareTo(distal) < 0)
                        .map(Flip::above).reduce((a, b) -> b)
                        .orElse((section.isBore() ? partner.hardest() : partner.easiest()).verdict());
                assertEquals(expected, verdict(section, question, new Size(distal, distal), Phase.IN));
            }
        });
    }

    @Test
    void unitOfTheLabelsDoesNotMatter() {
        Cases.check(4, random -> {
            RandomPassage passage = RandomPassages.any(random);
            long seed = random.nextLong();
            List<List<Flip>> byUnit = List.of(LengthUnit.MILLIMETRE, LengthUnit.INCH, LengthUnit.FRENCH).stream()
                    .map(unit -> flips(passage.question(unit).question(), seed)).toList();
            assertEquals(byUnit.get(0), byUnit.get(1));
            assertEquals(byUnit.get(0), byUnit.get(2));
        });
    }

    private static List<Flip> flips(FitQuestion question, long seed) {
        return SizeSearch.of(section(question, new Random(seed)), List.of(question), SOLVER).partners().stream()
                .flatMap(p -> p.flips().stream()).toList();
    }
}
