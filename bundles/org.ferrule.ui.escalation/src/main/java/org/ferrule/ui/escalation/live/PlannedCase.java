/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.live;

import java.util.Optional;

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
 * @param reasons what the order hangs on; absent while it is being worked out
 */
public record PlannedCase(OpenCase open, AssembledCase assembled, Plan plan, PlanWords words,
        Optional<OrderReasons> reasons) {

    /** The same, with what the order hangs on. */
    PlannedCase with(OrderReasons known) {
        return new PlannedCase(open, assembled, plan, words, Optional.of(known));
    }
}
