/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.live;

import java.util.List;
import java.util.Optional;

import org.ferrule.engine.limits.CaseLimit;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.plansheet.why.OrderReasons;
import org.ferrule.plansheet.words.PlanWords;

/**
 * A case with its plan.
 *
 * @param open the documents as they are being edited; to be read on the display's thread only
 * @param assembled what was planned
 * @param plan the plan
 * @param words says it
 * @param limits published limits and scores from what the case states
 * @param limitsInBrief the same in few lines
 * @param reasons what the order hangs on; absent while it is being worked out
 */
public record PlannedCase(OpenCase open, AssembledCase assembled, Plan plan, PlanWords words,
        List<CaseLimit> limits, List<String> limitsInBrief, Optional<OrderReasons> reasons) {
    public PlannedCase {
        limits = List.copyOf(limits);
        limitsInBrief = List.copyOf(limitsInBrief);
    }

    /** The same, with what the order hangs on. */
    PlannedCase with(OrderReasons known) {
        return new PlannedCase(open, assembled, plan, words, limits, limitsInBrief, Optional.of(known));
    }
}
