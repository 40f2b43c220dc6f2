/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.state;

import java.util.Map;
import java.util.Objects;

import org.ferrule.escalation.technique.Resource;

/**
 * What a plan is to spare, and what limits it.
 *
 * @param objective what is to be spared
 * @param stoppingCost what it costs to end without success, in the unit of the objective; 0 or more
 * @param budgets how much may be used in all, by resource, in its unit; a resource without one has no limit
 * @param budgetsLimit whether the budget of the objective limits the plan; else all are lines across it
 * @param tiersFirst whether a higher hazard never comes before a lower one that is possible
 * @param oneNewRiskAStep whether no step brings two new risks at once
 * @param sameAxisDiscount factor on the chances of techniques on the axis of one that failed; 1 turns it off
 */
public record Aim(Resource objective, double stoppingCost, Map<Resource, Double> budgets, boolean budgetsLimit,
        boolean tiersFirst, boolean oneNewRiskAStep, double sameAxisDiscount) {
    public Aim {
        Objects.requireNonNull(objective, "objective");
        budgets = Map.copyOf(budgets);
        if (!(stoppingCost >= 0) || Double.isInfinite(stoppingCost)) {
            throw new IllegalArgumentException("the cost of stopping cannot be " + stoppingCost);
        }
        if (!(sameAxisDiscount > 0) || sameAxisDiscount > 1) {
            throw new IllegalArgumentException(
                    "the discount of the same axis lies above 0 and up to 1, not " + sameAxisDiscount);
        }
        budgets.forEach((resource, budget) -> {
            if (!(budget >= 0)) {
                throw new IllegalArgumentException("the budget of " + resource.word() + " cannot be " + budget);
            }
        });
    }
}
