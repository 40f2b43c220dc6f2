/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How far the figures of a problem may move before its order changes.
 * <p>
 * The expected cost of one order is a straight line over each single figure. As long as the figure does not decide which
 * orders are allowed, the least cost is the lowest of these lines, and the order is the best on one interval. Its end is
 * where its line meets that of the order that is best there: from the farthest figure on, the line of the best order there
 * is followed to where it meets the line of the plan, until no order is better. Where tiers come first, or the costs of a
 * budget move, or the solver gives no best order, the end is found by halving.
 */
public final class Sensitivity {
    /** A share of the cost by which another order must be better. */
    private static final double BETTER = 1e-9;
    private static final int HALVINGS = 10;
    private final OrderProblem problem;
    private final OrderedPlan plan;
    private final List<Step> steps;

    /** @param plan that {@link Orders#solve} gave for the problem */
    public Sensitivity(OrderProblem problem, OrderedPlan plan) {
        this.problem = problem;
        this.plan = plan;
        steps = plan.steps();
    }

    /** Returns the ranges of all figures. Each takes some ten solutions of the problem at most. */
    public List<InputRange> all() {
        return Input.of(problem).stream().map(this::range).toList();
    }

    /** Returns the range of one figure. */
    public InputRange range(Input input) {
        OrderRules rules = problem.rules();
        boolean chanceOrStop = input.kind() == Input.Kind.TRY_CHANCE || input.kind() == Input.Kind.STOPPING_COST;
        boolean exact = plan.isExact() && !rules.tiersFirst() && (rules.budget().isEmpty() || chanceOrStop);
        double value = input.in(problem);
        return new InputRange(input, value, end(input, input.least(problem), exact),
                end(input, input.largest(problem), exact), exact);
    }

    private OptionalDouble end(Input input, double farthest, boolean exact) {
        return exact ? meeting(input, farthest) : halving(input, farthest);
    }

    private OptionalDouble meeting(Input input, double farthest) {
        double value = input.in(problem);
        double at = farthest;
        boolean changes = false;
        while (at != value) {
            OrderProblem moved = input.with(problem, at);
            OrderedPlan better = Orders.solve(moved);
            double gain = Plans.cost(moved, steps) - better.expectedCost();
            if (gain <= BETTER * (1 + better.expectedCost())) {
                return changes ? OptionalDouble.of(at) : OptionalDouble.empty();
            }
            changes = true;
            double loss = Math.max(0, Plans.cost(problem, better.steps()) - plan.expectedCost());
            at = value + (at - value) * loss / (loss + gain);
        }
        return changes ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private OptionalDouble halving(Input input, double farthest) {
        double same = input.in(problem);
        double other = farthest;
        if (same == other || isSame(input, other)) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (same + other) / 2;
            if (isSame(input, middle)) {
                same = middle;
            } else {
                other = middle;
            }
        }
        return OptionalDouble.of(same);
    }

    private boolean isSame(Input input, double value) {
        List<Step> others = Orders.solve(input.with(problem, value)).steps();
        if (others.size() != steps.size()) {
            return false;
        }
        for (int i = 0; i < steps.size(); i++) {
            if (!others.get(i).id().equals(steps.get(i).id()) || others.get(i).attempt() != steps.get(i).attempt()) {
                return false;
            }
        }
        return true;
    }
}
