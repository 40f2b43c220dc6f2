/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.List;

/** Makes a plan from steps in their order. */
final class Plans {

    private Plans() {
    }

    /**
     * The expected cost of steps in an order, with stopping, and with the figures of the problem in place of those of the
     * steps.
     */
    static double cost(OrderProblem problem, List<Step> steps) {
        Model model = new Model(problem);
        Moves moves = new Moves(model);
        State state = State.start(model);
        double cost = 0;
        double reach = 1;
        for (Step step : steps) {
            int move = model.move(step);
            cost += reach * moves.cost(state, move);
            reach *= 1 - moves.chance(state, move);
            state = moves.after(state, move);
        }
        return cost + reach * problem.stoppingCost();
    }

    /** @param lower bound on the expected cost of all plans, if below that of this one */
    static OrderedPlan of(OrderProblem problem, List<Step> steps, double lower) {
        List<Placement> placements = new ArrayList<>();
        List<Group> groups = Group.of(problem, steps);
        double expected = 0;
        double worst = 0;
        double reach = 1;
        for (int number = 0; number < groups.size(); number++) {
            for (Step step : groups.get(number).steps()) {
                placements.add(new Placement(step, reach, number, groups.get(number).block().ratio()));
                expected += reach * step.cost();
                worst += step.cost();
                reach *= 1 - step.chance();
            }
        }
        expected += reach * problem.stoppingCost();
        return new OrderedPlan(placements, expected, Math.min(lower, expected), 1 - reach, worst);
    }
}
