/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.OptionalDouble;

/**
 * What is asked of an order beside its expected cost.
 *
 * @param tiersFirst whether a step never comes before one of a lower tier that is possible; what that means is said in
 *        the description of the package
 * @param oneNewRiskAStep whether between two tries at most one new risk is brought in
 * @param sameAxisDiscount factor on the chances of all other options of an axis after each failed try on it; 0 to 1,
 *        and 1 for none
 * @param budget that the costs of all steps together must not exceed, if there is one; 0 or more
 */
public record OrderRules(boolean tiersFirst, boolean oneNewRiskAStep, double sameAxisDiscount, OptionalDouble budget) {

    /** No rule at all. */
    public static final OrderRules NONE = new OrderRules(false, false, 1, OptionalDouble.empty());

    /** @throws OrderException naming the values that are out of range */
    public OrderRules {
        if (!(sameAxisDiscount >= 0 && sameAxisDiscount <= 1)) {
            throw new OrderException("a discount must lie between 0 and 1, not " + sameAxisDiscount);
        }
        budget.ifPresent(limit -> Checks.cost("a budget", limit));
    }

    /** Whether nothing but what options and set-ups need decides which orders are allowed. */
    boolean needsOnly() {
        return !tiersFirst && !oneNewRiskAStep && sameAxisDiscount == 1 && budget.isEmpty();
    }
}
