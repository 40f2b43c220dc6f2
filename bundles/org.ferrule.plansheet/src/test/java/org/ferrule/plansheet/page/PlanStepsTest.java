/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.chart.Drawn;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.picture.Picture;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.plansheet.words.PlanWords;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The steps of a plan by themselves: each of them, below the bars of all budgets. */
class PlanStepsTest {
    private final Plan plan = SamplePlan.plan();
    private final PlanWords words = SamplePlan.words(plan.ladder());

    @ParameterizedTest
    @ValueSource(doubles = { 120, 150, 190 })
    void everyStepAndEveryBudgetStandsOnThePaper(double widthMm) {
        Picture picture = PlanSteps.of(plan, words, widthMm);
        Drawn drawn = Drawn.of(picture);
        assertEquals(widthMm, picture.widthMm());
        assertEquals(List.of(), drawn.outside(picture.paper()));
        plan.rungs().forEach(rung -> assertTrue(drawn.hasGroup("rung:" + rung.number()), "step " + rung.number()));
        assertTrue(drawn.groups().stream().anyMatch(group -> group.id().startsWith("budget:")), drawn.text());
        plan.rungs().forEach(rung -> assertTrue(picture.description().contains(words.rungs().heading(rung)),
                picture.description()));
    }
}
