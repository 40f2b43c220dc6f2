/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.configuration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the order of least expected cost among reversible configurations.
 * <p>
 * What has been tried and the configuration are all that matters for the rest. Up to 20 options that are worth it and 16
 * configurations the best way on is worked out for all of these states: the least of stopping, and of changing by the
 * cheapest way to a configuration and trying something there. Beyond that the next try is always that of least cost per
 * chance, change included; that is not claimed to be the best, and the bound is the cost of an order in which changes cost
 * nothing.
 */
public final class ConfigurationOrders {
    private static final int MOST_OPTIONS = 20;
    private static final int MOST_CONFIGURATIONS = 16;

    private final ConfigurationProblem problem;
    private final Ways ways;

    private ConfigurationOrders(ConfigurationProblem problem) {
        this.problem = problem;
        ways = new Ways(problem);
    }

    /** Returns the best order, or a good one with a bound on how much better the best can be. */
    public static ConfigurationPlan solve(ConfigurationProblem problem) {
        ConfigurationOrders orders = new ConfigurationOrders(problem);
        boolean exact = orders.ways.options.size() <= MOST_OPTIONS && orders.ways.size <= MOST_CONFIGURATIONS;
        return exact ? orders.plan(new LeastCosts(orders.ways).order(), Double.POSITIVE_INFINITY)
                : orders.plan(orders.nearest(), orders.withFreeChanges());
    }

    private List<Ways.Next> nearest() {
        List<Ways.Next> order = new ArrayList<>();
        boolean[] tried = new boolean[ways.options.size()];
        int place = 0;
        for (Optional<Ways.Next> next = nearest(tried, place); next.isPresent(); next = nearest(tried, place)) {
            order.add(next.get());
            tried[next.get().option()] = true;
            place = next.get().place();
        }
        return order;
    }

    private Optional<Ways.Next> nearest(boolean[] tried, int from) {
        Optional<Ways.Next> best = Optional.empty();
        double least = ways.stop;
        for (int i = 0; i < tried.length; i++) {
            for (int place : tried[i] ? new int[0] : ways.places[i]) {
                double index = (ways.change[from][place] + ways.cost[i]) / (1 - ways.fails[i]);
                if (index < least) {
                    best = Optional.of(new Ways.Next(i, place));
                    least = index;
                }
            }
        }
        return best;
    }

    private double withFreeChanges() {
        List<Integer> byIndex = IntStream.range(0, ways.options.size()).boxed()
                .sorted(Comparator.comparingDouble(i -> ways.cost[i] / (1 - ways.fails[i]))).toList();
        double cost = 0;
        double reach = 1;
        for (int i : byIndex) {
            cost += reach * ways.cost[i];
            reach *= ways.fails[i];
        }
        return cost + reach * ways.stop;
    }

    private ConfigurationPlan plan(List<Ways.Next> order, double lower) {
        List<ConfigurationPlan.Step> steps = new ArrayList<>();
        double expected = 0;
        double reach = 1;
        int place = 0;
        for (Ways.Next next : order) {
            ConfiguredOption option = ways.options.get(next.option());
            double change = ways.change[place][next.place()];
            steps.add(new ConfigurationPlan.Step(option.id(), problem.configurations().get(next.place()), change,
                    option.attempt().cost(), option.attempt().chance(), reach));
            expected += reach * (change + option.attempt().cost());
            reach *= ways.fails[next.option()];
            place = next.place();
        }
        expected += reach * ways.stop;
        return new ConfigurationPlan(steps, expected, Math.min(lower, expected), 1 - reach);
    }
}
