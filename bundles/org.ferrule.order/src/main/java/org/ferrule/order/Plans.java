/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

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
        double expected = 0;
        double worst = 0;
        double reach = 1;
        int block = 0;
        int end = 0;
        double index = 0;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            if (i == end) {
                end = blockEnd(problem, steps, i);
                index = ratio(steps.subList(i, end));
                block += i == 0 ? 0 : 1;
            }
            placements.add(new Placement(step, reach, block, index));
            expected += reach * step.cost();
            worst += step.cost();
            reach *= 1 - step.chance();
        }
        expected += reach * problem.stoppingCost();
        return new OrderedPlan(placements, expected, Math.min(lower, expected), 1 - reach, worst);
    }

    /** The steps from one on that belong together and have the least ratio. */
    private static int blockEnd(OrderProblem problem, List<Step> steps, int start) {
        Set<String> block = new HashSet<>();
        Block all = new Block(0, 0);
        double best = Double.POSITIVE_INFINITY;
        int end = start + 1;
        for (int i = start; i < steps.size() && (i == start || belongs(problem, steps.get(i), block)); i++) {
            Step step = steps.get(i);
            block.add(step.id());
            all = all.then(new Block(step.cost(), step.chance()));
            if (all.ratio() < best) {
                best = all.ratio();
                end = i + 1;
            }
        }
        return end;
    }

    private static double ratio(List<Step> steps) {
        Block all = new Block(0, 0);
        for (Step step : steps) {
            all = all.then(new Block(step.cost(), step.chance()));
        }
        return all.ratio();
    }

    /** A later try of the same option, something that needs what is in the block, or another set-up of the block. */
    private static boolean belongs(OrderProblem problem, Step step, Set<String> block) {
        if (block.contains(step.id())) {
            return true;
        }
        if (step.isSetup()) {
            return problem.setups().stream().anyMatch(setup -> block.contains(setup.id()));
        }
        Option option = problem.options().stream().filter(any -> any.id().equals(step.id())).findFirst().orElseThrow();
        return option.setups().stream().anyMatch(block::contains) || option.after().stream().anyMatch(block::contains);
    }
}
