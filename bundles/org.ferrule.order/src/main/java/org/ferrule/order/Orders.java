/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.List;

/** Orders steps. */
public final class Orders {
    private Orders() {
    }

    /** A plan in the conventional order. */
    public static OrderedPlan solve(OrderProblem problem) {
        List<Placement> placements = new ArrayList<>();
        List<String> done = new ArrayList<>();
        double reach = 1;
        double expected = 0;
        double worst = 0;
        for (Option option : problem.options()) {
            for (String id : option.setups()) {
                if (!done.contains(id)) {
                    done.add(id);
                    Setup setup = problem.setups().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
                    placements.add(new Placement(new Step(id, 0, setup.cost(), 0), reach, placements.size(), 0));
                    expected += reach * setup.cost();
                    worst += setup.cost();
                }
            }
            for (int k = 0; k < option.tries().size(); k++) {
                Try attempt = option.tries().get(k);
                placements.add(new Placement(new Step(option.id(), k + 1, attempt.cost(), attempt.chance()), reach,
                        placements.size(), attempt.cost() / attempt.chance()));
                expected += reach * attempt.cost();
                worst += attempt.cost();
                reach *= 1 - attempt.chance();
            }
        }
        double total = expected + reach * problem.stoppingCost();
        return new OrderedPlan(placements, total, 0, 1 - reach, worst);
    }
}
