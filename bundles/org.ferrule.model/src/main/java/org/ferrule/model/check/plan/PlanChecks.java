/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.time.LocalDate;
import java.util.List;

import org.ferrule.model.check.Check;

/** All rules for techniques, cases and shelves. */
public final class PlanChecks {

    private PlanChecks() {
    }

    /**
     * Returns the rules.
     *
     * @param today what has expired before is told
     */
    public static List<Check> all(LocalDate today) {
        return List.of(new MoveReferenceCheck(), new CircleCheck(), new RoleCheck(), new NeedCheck(),
                new PlacementCheck(), new TryCheck(), new AdviceCheck(), new StopRuleCheck(), new StatedFactCheck(),
                new PatientCheck(), new PrivacyCheck(), new StockItemCheck(today), new StockLotCheck(today));
    }
}
