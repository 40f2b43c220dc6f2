/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

import org.ferrule.order.Conventional;
import org.ferrule.order.Input;
import org.ferrule.order.Option;
import org.ferrule.order.OrderProblem;
import org.ferrule.order.OrderRules;
import org.ferrule.order.OrderedPlan;
import org.ferrule.order.Orders;
import org.ferrule.order.Placement;
import org.ferrule.order.Setup;
import org.ferrule.order.Step;
import org.ferrule.order.Try;
import org.junit.jupiter.api.Test;

/** How the least cost moves with the figures, and what every plan keeps. */
class OrderLawsTest {
    private static final double ROUNDING = 1e-9;

    private static OrderRules withoutTiers(OrderRules rules) {
        return new OrderRules(false, rules.oneNewRiskAStep(), rules.sameAxisDiscount(), rules.budget());
    }

    private static OrderProblem without(Random random, boolean tiers) {
        RandomProblem problems = new RandomProblem(random);
        OrderRules rules = problems.rules();
        return problems.problem(4, 5, 3, tiers ? rules : withoutTiers(rules));
    }

    private static double least(OrderProblem problem) {
        return Orders.solve(problem).expectedCost();
    }

    /** Under a budget too: a smaller cost leaves room. With tiers it may turn a lower step into one that is possible. */
    @Test
    void largerChanceOrSmallerCostNeverRaisesTheLeastCost() {
        Cases.check(300, random -> {
            OrderProblem problem = without(random, false);
            List<Input> inputs = Input.of(problem);
            Input input = inputs.get(random.nextInt(inputs.size()));
            boolean chance = input.kind() == Input.Kind.TRY_CHANCE;
            double from = input.in(problem);
            double room = chance && input.attempt() > 1
                    ? new Input(Input.Kind.TRY_CHANCE, input.id(), input.attempt() - 1).in(problem) - from
                    : chance ? 1 - from : -from;
            OrderProblem better = input.with(problem, from + room * random.nextDouble());
            assertTrue(least(better) <= least(problem) + ROUNDING, () -> input + " of " + problem);
        });
    }

    @Test
    void furtherOptionNeverRaisesTheLeastCostWithoutTiers() {
        Cases.check(300, random -> {
            OrderProblem problem = without(random, false);
            List<Option> more = new ArrayList<>(problem.options());
            more.add(new RandomProblem(random).option(more.size(), problem.setups().size(), 2));
            assertTrue(
                    least(new OrderProblem(problem.setups(), more, problem.stoppingCost(), problem.rules())) <= least(
                            problem) + ROUNDING,
                    problem::toString);
        });
    }

    @Test
    void scaledCostsScaleTheLeastCost() {
        Cases.check(300, random -> {
            OrderProblem problem = without(random, true);
            double factor = Math.exp(4 * random.nextDouble() - 2);
            OrderedPlan plan = Orders.solve(problem);
            OrderedPlan scaled = Orders.solve(scaled(problem, factor));
            assertEquals(plan.expectedCost() * factor, scaled.expectedCost(), 1e-9 * plan.expectedCost() * factor);
        });
    }

    private static OrderProblem scaled(OrderProblem problem, double factor) {
        List<Setup> setups = problem.setups().stream().map(s -> s.withCost(s.cost() * factor)).toList();
        List<Option> options = problem.options().stream().map(o -> o.withTries(
                o.tries().stream().map(t -> new Try(t.cost() * factor, t.chance())).toList())).toList();
        OrderRules rules = problem.rules();
        OptionalDouble budget = rules.budget().isEmpty() ? rules.budget()
                : OptionalDouble.of(rules.budget().getAsDouble() * factor);
        return new OrderProblem(setups, options, problem.stoppingCost() * factor,
                new OrderRules(rules.tiersFirst(), rules.oneNewRiskAStep(), rules.sameAxisDiscount(), budget));
    }

    /** The least cost rises with the cost of stopping, by no more than that, and so does the chance of success. */
    @Test
    void dearerStoppingIsWorthMoreTries() {
        Cases.check(300, random -> {
            OrderProblem problem = without(random, false);
            double more = problem.stoppingCost() * random.nextDouble();
            OrderedPlan plan = Orders.solve(problem);
            OrderedPlan dearer = Orders.solve(new OrderProblem(problem.setups(), problem.options(),
                    problem.stoppingCost() + more, problem.rules()));
            assertTrue(dearer.expectedCost() >= plan.expectedCost() - ROUNDING);
            assertTrue(dearer.expectedCost() <= plan.expectedCost() + more + ROUNDING);
            assertTrue(dearer.successChance() >= plan.successChance() - ROUNDING, problem::toString);
        });
    }

    /** By taking the steps a hundred thousand times; five standard errors would be met once in millions of draws. */
    @Test
    void expectedCostIsWhatStepsCostOnAverage() {
        Cases.check(20, random -> {
            OrderProblem problem = without(random, true);
            OrderedPlan plan = Orders.solve(problem);
            int runs = 100_000;
            double sum = 0;
            double squares = 0;
            int successes = 0;
            for (int run = 0; run < runs; run++) {
                double cost = 0;
                boolean done = false;
                for (Step step : plan.steps()) {
                    cost += step.cost();
                    if (random.nextDouble() < step.chance()) {
                        done = true;
                        break;
                    }
                }
                cost += done ? 0 : problem.stoppingCost();
                successes += done ? 1 : 0;
                sum += cost;
                squares += cost * cost;
            }
            double mean = sum / runs;
            double error = Math.sqrt(Math.max(0, squares / runs - mean * mean) / runs);
            assertEquals(plan.expectedCost(), mean, 5 * error + 1e-6);
            assertEquals(plan.successChance(), (double) successes / runs, 5 * Math.sqrt(.25 / runs));
        });
    }

    /**
     * Of tiers each is planned for itself. Where failures tell against an axis, or where a new risk must not follow
     * another, so that a tier may be left for a while, that may cost more in the end; but no order of these steps costs
     * less than the best without tiers.
     */
    @Test
    void usualOrderCostsNoLessAndHasTheSameSteps() {
        Cases.check(300, random -> {
            OrderProblem problem = without(random, true);
            OrderRules rules = problem.rules();
            boolean leastOfAll = !rules.tiersFirst() || rules.sameAxisDiscount() == 1 && !rules.oneNewRiskAStep();
            OrderedPlan plan = Orders.solve(problem);
            double bound = leastOfAll ? plan.expectedCost() : Orders.solve(withoutTiers(problem)).lowerBound();
            Conventional.of(problem, plan).ifPresent(given -> {
                assertEquals(names(plan), names(given));
                assertTrue(given.expectedCost() >= bound - ROUNDING, problem::toString);
                assertEquals(plan.worstCost(), given.worstCost(), ROUNDING);
            });
        });
    }

    private static OrderProblem withoutTiers(OrderProblem problem) {
        OrderRules rules = problem.rules();
        return new OrderProblem(problem.setups(), problem.options(), problem.stoppingCost(),
                new OrderRules(false, rules.oneNewRiskAStep(), rules.sameAxisDiscount(), rules.budget()));
    }

    private static List<String> names(OrderedPlan plan) {
        return plan.steps().stream().map(step -> step.id() + step.attempt()).sorted().toList();
    }

    /** Without rules the blocks stand in the order of their ratios, all below the cost of stopping. */
    @Test
    void ratiosRiseAndStayBelowStopping() {
        Cases.check(300, random -> {
            OrderProblem problem = new RandomProblem(random).problem(6, 20, 3, OrderRules.NONE);
            OrderedPlan plan = Orders.solve(problem);
            assertTrue(plan.isExact());
            double last = 0;
            for (Placement placement : plan.placements()) {
                assertTrue(placement.index() < problem.stoppingCost() + ROUNDING, plan::toString);
                assertTrue(placement.index() >= last - ROUNDING, plan::toString);
                last = placement.index();
            }
        });
    }
}
