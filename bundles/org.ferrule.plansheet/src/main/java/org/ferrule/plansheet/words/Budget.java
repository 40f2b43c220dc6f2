/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Resource;

/**
 * How a plan stands to one resource, in its unit.
 *
 * @param resource which
 * @param used by now
 * @param expected used when the plan is over, as a mean
 * @param worst used when every step was taken
 * @param limit how much may be used; absent when nobody says
 * @param beyond number of the first step whose worst case exceeds the limit; absent when none does
 */
public record Budget(Resource resource, double used, double expected, double worst, OptionalDouble limit,
        OptionalInt beyond) {

    public Budget {
        Objects.requireNonNull(resource, "resource");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(beyond, "beyond");
    }

    /** Of all resources that have a limit or are used. */
    public static List<Budget> of(Plan plan) {
        List<Budget> budgets = new ArrayList<>();
        for (Resource resource : Resource.values()) {
            Budget budget = of(plan, resource);
            if (budget.limit.isPresent() || budget.worst > 0) {
                budgets.add(budget);
            }
        }
        return List.copyOf(budgets);
    }

    private static Budget of(Plan plan, Resource resource) {
        Costs expected = plan.rungs().isEmpty() ? plan.used() : last(plan).expected();
        Costs worst = plan.rungs().isEmpty() ? plan.used() : last(plan).worst();
        Double limit = plan.file().aim().budgets().get(resource);
        return new Budget(resource, plan.used().of(resource), expected.of(resource), worst.of(resource),
                limit == null ? OptionalDouble.empty() : OptionalDouble.of(limit), plan.rungs().stream()
                        .filter(rung -> rung.beyond().contains(resource)).mapToInt(Rung::number).findFirst());
    }

    private static Rung last(Plan plan) {
        return plan.rungs().get(plan.rungs().size() - 1);
    }

    /** Whether the limit is reached already. */
    public boolean isUsedUp() {
        return limit.isPresent() && used >= limit.getAsDouble();
    }
}
