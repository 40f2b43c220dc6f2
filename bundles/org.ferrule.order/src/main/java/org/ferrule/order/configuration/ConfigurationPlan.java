/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.configuration;

import java.util.List;

/**
 * An order of tries, each in a configuration.
 *
 * @param steps in their order
 * @param expectedCost of changes and tries until one succeeds, with the stopping cost where none does
 * @param lowerBound no order has a lower expected cost; the expected cost itself if the plan is the best
 * @param successChance that one of the tries succeeds
 */
public record ConfigurationPlan(List<Step> steps, double expectedCost, double lowerBound, double successChance) {

    /**
     * A try, after the change to its configuration.
     *
     * @param option id of the option
     * @param configuration in which it is tried
     * @param changeCost of the cheapest way there from the configuration before; 0 where it is the same
     * @param cost of the try
     * @param chance of the try
     * @param reach chance that it is reached
     */
    public record Step(String option, String configuration, double changeCost, double cost, double chance,
            double reach) {
    }

    /** Keeps what it is given. */
    public ConfigurationPlan {
        steps = List.copyOf(steps);
    }

    /** Returns whether no order is better. */
    public boolean isExact() {
        return lowerBound == expectedCost;
    }
}
