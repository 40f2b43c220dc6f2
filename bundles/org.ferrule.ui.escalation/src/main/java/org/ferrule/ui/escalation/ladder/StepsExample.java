/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.ferrule.escalation.plan.Plan;
import org.ferrule.picture.Picture;
import org.ferrule.plansheet.page.PlanSteps;
import org.ferrule.plansheet.words.PlanWords;

/** The steps of a short plan with the bars of its budgets, as on paper. */
public class StepsExample extends ExampleCase {

    @Override
    Picture draw(Plan plan, PlanWords words, double widthMm) {
        return PlanSteps.of(plan, words, widthMm);
    }
}
