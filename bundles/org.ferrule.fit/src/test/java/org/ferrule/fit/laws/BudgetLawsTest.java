/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.size.BudgetSearch;
import org.ferrule.fit.engineering.size.Contributor;
import org.ferrule.fit.engineering.size.ToleranceBudget;
import org.ferrule.fit.laws.RandomPassage.RandomRules;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Laws of tolerance budgets beside others and through extensions. */
class BudgetLawsTest {
    private static final FitSolver SOLVER = FitSolver.standard(List.of());
    private int budgets;
    private int saved;

    @Test
    void nobodyGivesMoreThanThereIsAndTogetherItIsMostlyEnough() {
        Cases.check(15, this::check);
        assertTrue(budgets > 3, "enough budgets: " + budgets);
    }

    @Test
    @Tag("slow")
    void nobodyGivesMoreThanThereIsInThousands() {
        Cases.check(4_000, this::check);
        assertTrue(budgets > 300 && saved > budgets / 4, "enough budgets: " + budgets + ", saved: " + saved);
    }

    private void check(Random random) {
        RandomShared shared = RandomShared.known(random);
        Optional<RandomExtension> extension = random.nextInt(3) > 0 ? Optional.empty()
                : Optional.of(RandomExtension.in(shared.passage(), random));
        PhaseAnswer easy = SOLVER.answer(question(shared, extension)).in(Phase.IN);
        if (easy.clearance().filter(c -> !c.worst().isNegative()).isPresent()) {
            long worst = easy.clearance().orElseThrow().worst().thirdNanometres() / RandomFigure.GRAIN;
            RandomRules rules = shared.passage().rules();
            RandomShared asked = shared.withPassage(shared.passage().withRules(new RandomRules(rules.spanBelow(),
                    rules.spanAbove(), (int) worst + 1 + random.nextInt(60), rules.growthPercent())));
            FitQuestion question = question(asked, extension);
            BudgetSearch.of(question, SOLVER)
                    .ifPresent(b -> check(b, SOLVER.answer(question).in(Phase.IN).verdict()));
        }
    }

    private static FitQuestion question(RandomShared shared, Optional<RandomExtension> extension) {
        return extension.map(e -> e.question(shared, LengthUnit.MILLIMETRE))
                .orElseGet(() -> shared.question(LengthUnit.MILLIMETRE)).question();
    }

    private void check(ToleranceBudget budget, Verdict verdict) {
        budgets++;
        assertEquals(Verdict.TIGHT, verdict);
        assertTrue(budget.missing().compareTo(Length.ZERO) > 0);
        assertEquals(budget.missingWithoutSpread().equals(Length.ZERO), budget.afterSharing().isPresent());
        for (Contributor contributor : budget.contributors()) {
            assertTrue(contributor.shared().compareTo(contributor.spread()) <= 0, contributor.toString());
            assertTrue(contributor.shared().compareTo(contributor.alone()) <= 0, contributor.toString());
        }
        budget.afterSharing().ifPresent(after -> {
            assertTrue(after.compareTo(Verdict.TIGHT) <= 0, "less tolerance made it " + after);
            saved += after == Verdict.FITS ? 1 : 0;
        });
    }
}
