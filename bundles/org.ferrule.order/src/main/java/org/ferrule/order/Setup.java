/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.Set;

/**
 * Something brought into the system that stays there. It has a cost and no success of its own.
 *
 * @param id of its own among the options and set-ups of a problem
 * @param cost in the unit of the objective; 0 or more
 * @param setups ids of the set-ups that must be in place before
 * @param tier class of hazard; lower ones come first where the rules say so
 * @param newRisk whether it brings in a new risk
 */
public record Setup(String id, double cost, Set<String> setups, int tier, boolean newRisk) {

    /** @throws OrderException naming the values that are out of range */
    public Setup {
        Checks.id(id);
        Checks.cost(id, cost);
        setups = Set.copyOf(setups);
    }

    /** Returns a set-up that needs nothing, of tier 0, without a new risk. */
    public static Setup of(String id, double cost) {
        return new Setup(id, cost, Set.of(), 0, false);
    }

    /** Returns the same set-up at another cost. */
    public Setup withCost(double other) {
        return new Setup(id, other, setups, tier, newRisk);
    }
}
