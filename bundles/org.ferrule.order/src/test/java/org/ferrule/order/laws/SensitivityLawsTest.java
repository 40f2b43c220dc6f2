/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

import org.ferrule.order.Input;
import org.ferrule.order.InputRange;
import org.ferrule.order.OrderProblem;
import org.ferrule.order.OrderRules;
import org.ferrule.order.OrderedPlan;
import org.ferrule.order.Orders;
import org.ferrule.order.Sensitivity;
import org.ferrule.order.Step;
import org.junit.jupiter.api.Test;

/** Inside its range a figure keeps the plan the best, and just outside another is better. */
class SensitivityLawsTest {

    @Test
    void rangeEndsWhereAnotherOrderIsBetter() {
        Cases.check(150, random -> {
            RandomProblem problems = new RandomProblem(random);
            OrderRules any = problems.rules();
            OrderProblem problem = problems.problem(3, 4, 2,
                    new OrderRules(false, any.oneNewRiskAStep(), any.sameAxisDiscount(), OptionalDouble.empty()));
            OrderedPlan plan = Orders.solve(problem);
            Sensitivity sensitivity = new Sensitivity(problem, plan);
            List<Input> inputs = Input.of(problem);
            InputRange range = sensitivity.range(inputs.get(random.nextInt(inputs.size())));
            assertTrue(range.exact());
            range.low().ifPresent(end -> checkEnd(problem, plan, range, end, random));
            range.high().ifPresent(end -> checkEnd(problem, plan, range, end, random));
        });
    }

    private static void checkEnd(OrderProblem problem, OrderedPlan plan, InputRange range, double end, Random random) {
        Input input = range.input();
        double inside = range.value() + (end - range.value()) * random.nextDouble();
        assertEquals(Orders.solve(input.with(problem, inside)).expectedCost(),
                cost(input.with(problem, inside), plan.steps()), 1e-7, () -> range + " inside of " + problem);
        double outside = end + (end - range.value()) * 0.01;
        boolean allowed = input.kind() != Input.Kind.TRY_CHANCE || outside >= 0 && outside <= 1;
        if (allowed && outside > 0 && isInOrder(input, problem, outside) && end != range.value()) {
            OrderProblem moved = input.with(problem, outside);
            assertTrue(Orders.solve(moved).expectedCost() < cost(moved, plan.steps()), () -> range + " of " + problem);
        }
    }

    private static boolean isInOrder(Input input, OrderProblem problem, double value) {
        if (input.kind() != Input.Kind.TRY_CHANCE) {
            return true;
        }
        int tries = problem.options().stream().filter(o -> o.id().equals(input.id())).findFirst().orElseThrow().tries()
                .size();
        return (input.attempt() == 1
                || value <= new Input(input.kind(), input.id(), input.attempt() - 1).in(problem))
                && (input.attempt() == tries
                        || value >= new Input(input.kind(), input.id(), input.attempt() + 1).in(problem));
    }

    /** Of the same steps with the figures of another problem; the discount is counted anew. */
    private static double cost(OrderProblem problem, List<Step> steps) {
        double cost = 0;
        double reach = 1;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            double now = step.isSetup() ? new Input(Input.Kind.SETUP_COST, step.id(), 0).in(problem)
                    : new Input(Input.Kind.TRY_COST, step.id(), step.attempt()).in(problem);
            double chance = step.isSetup() ? 0
                    : new Input(Input.Kind.TRY_CHANCE, step.id(), step.attempt()).in(problem)
                            * discount(problem, steps.subList(0, i), step);
            cost += reach * now;
            reach *= 1 - chance;
        }
        return cost + reach * problem.stoppingCost();
    }

    private static double discount(OrderProblem problem, List<Step> before, Step step) {
        String axis = axis(problem, step);
        return before.stream()
                .filter(other -> !other.isSetup() && !other.id().equals(step.id()) && !axis.isEmpty()
                        && axis.equals(axis(problem, other)))
                .mapToDouble(other -> problem.rules().sameAxisDiscount()).reduce(1, (a, b) -> a * b);
    }

    private static String axis(OrderProblem problem, Step step) {
        return problem.options().stream().filter(o -> o.id().equals(step.id())).findFirst().orElseThrow().axis();
    }
}
