/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.ferrule.order.Try;
import org.ferrule.order.configuration.ConfigurationOrders;
import org.ferrule.order.configuration.ConfigurationPlan;
import org.ferrule.order.configuration.ConfigurationProblem;
import org.ferrule.order.configuration.ConfiguredOption;
import org.junit.jupiter.api.Test;

/** What is found among configurations is what trying all orders finds. */
class ConfigurationLawsTest {

    @Test
    void leastCostIsThatOfAllOrders() {
        Cases.check(400, random -> {
            ConfigurationProblem problem = problem(random, 3, 4);
            ConfigurationPlan plan = ConfigurationOrders.solve(problem);
            assertEquals(least(problem, "c0", Set.of(), new HashSet<>()), plan.expectedCost(), 1e-9, problem::toString);
            assertTrue(plan.isExact());
            assertEquals(plan.expectedCost(), followed(problem, plan), 1e-9);
        });
    }

    /** Twenty-one options are more than can be proved; the plan is one, and the bound is below it. */
    @Test
    void beyondTheLimitTheBoundHolds() {
        Cases.check(20, random -> {
            ConfigurationProblem large = problem(random, 3, 21);
            ConfigurationPlan plan = ConfigurationOrders.solve(large);
            assertEquals(plan.expectedCost(), followed(large, plan), 1e-9);
            assertTrue(plan.lowerBound() <= plan.expectedCost());
            ConfigurationProblem part = new ConfigurationProblem(large.configurations(), large.changeCosts(),
                    large.options().subList(0, Math.min(9, large.options().size())), large.stoppingCost());
            assertTrue(plan.lowerBound() <= ConfigurationOrders.solve(part).expectedCost() + 1e-9);
        });
    }

    private static ConfigurationProblem problem(Random random, int mostConfigurations, int options) {
        List<String> names = new ArrayList<>();
        for (int i = random.nextInt(mostConfigurations); i >= 0; i--) {
            names.add("c" + names.size());
        }
        List<List<Double>> changes = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            List<Double> row = new ArrayList<>();
            names.forEach(any -> row.add(random.nextInt(4) == 0 ? Double.POSITIVE_INFINITY : random.nextDouble() * 8));
            changes.add(row);
        }
        List<ConfiguredOption> all = new ArrayList<>();
        for (int i = 0; i < options; i++) {
            Set<String> in = new HashSet<>();
            names.forEach(name -> {
                if (random.nextBoolean()) {
                    in.add(name);
                }
            });
            all.add(new ConfiguredOption("o" + i,
                    new Try(random.nextDouble() * 9, random.nextInt(9) == 0 ? 1 : random.nextDouble() * .8), in));
        }
        return new ConfigurationProblem(names, changes, all, 10 + random.nextInt(90));
    }

    /** Stopping, any try here, or any direct change to a configuration that was not passed since the last try. */
    private static double least(ConfigurationProblem problem, String place, Set<String> passed, Set<String> tried) {
        double best = problem.stoppingCost();
        for (ConfiguredOption option : problem.options()) {
            if (option.configurations().contains(place) && tried.add(option.id())) {
                best = Math.min(best, option.attempt().cost()
                        + (1 - option.attempt().chance()) * least(problem, place, Set.of(), tried));
                tried.remove(option.id());
            }
        }
        Set<String> now = new HashSet<>(passed);
        now.add(place);
        int from = problem.configurations().indexOf(place);
        for (String other : problem.configurations()) {
            double cost = problem.changeCosts().get(from).get(problem.configurations().indexOf(other));
            if (!now.contains(other) && cost < best) {
                best = Math.min(best, cost + least(problem, other, now, tried));
            }
        }
        return best;
    }

    /** The cost of the plan, counted from the problem. */
    private static double followed(ConfigurationProblem problem, ConfigurationPlan plan) {
        double cost = 0;
        double reach = 1;
        Set<String> tried = new HashSet<>();
        String place = "c0";
        for (ConfigurationPlan.Step step : plan.steps()) {
            ConfiguredOption option = problem.options().stream().filter(o -> o.id().equals(step.option())).findFirst()
                    .orElseThrow();
            assertTrue(tried.add(step.option()), "tried once");
            assertTrue(option.configurations().contains(step.configuration()));
            assertEquals(place.equals(step.configuration()), step.changeCost() == 0);
            assertEquals(reach, step.reach(), 1e-12);
            cost += reach * (step.changeCost() + option.attempt().cost());
            reach *= 1 - option.attempt().chance();
            place = step.configuration();
        }
        return cost + reach * problem.stoppingCost();
    }
}
