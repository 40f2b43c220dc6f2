/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.List;

/**
 * An order of steps, and what is known of it.
 *
 * @param placements the steps in their order, with the reasons of their places; none if it is best to stop at once
 * @param expectedCost of the steps until one succeeds, with the stopping cost where none does
 * @param lowerBound no allowed order has a lower expected cost; the expected cost itself if the plan is the best
 * @param successChance that one of the steps succeeds
 * @param worstCost of all the steps together, without the stopping cost
 */
public record OrderedPlan(List<Placement> placements, double expectedCost, double lowerBound, double successChance,
        double worstCost) {

    /** Keeps what it is given. */
    public OrderedPlan {
        placements = List.copyOf(placements);
    }

    /** Returns the steps in their order. */
    public List<Step> steps() {
        return placements.stream().map(Placement::step).toList();
    }

    /** Returns the expected cost of the steps alone, without that of stopping. */
    public double stepsCost() {
        return placements.stream().mapToDouble(placement -> placement.reach() * placement.step().cost()).sum();
    }

    /** Returns whether no allowed order is better. */
    public boolean isExact() {
        return lowerBound == expectedCost;
    }

    /** Returns by how much a better order could be better at most; 0 if the plan is the best. */
    public double gap() {
        return expectedCost - lowerBound;
    }
}
