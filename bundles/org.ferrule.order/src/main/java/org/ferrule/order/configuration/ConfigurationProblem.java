/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.configuration;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.ferrule.order.OrderException;

/**
 * Which options there are, and what it costs to change between configurations.
 *
 * @param configurations names; the first is the one to start in
 * @param changeCosts from each configuration, in their order, to each; 0 or more, infinite where there is no direct way
 * @param options in any order
 * @param stoppingCost what it costs when all tries have failed; 0 or more
 */
public record ConfigurationProblem(List<String> configurations, List<List<Double>> changeCosts,
        List<ConfiguredOption> options, double stoppingCost) {

    /** @throws OrderException naming what is there twice, not there or out of range */
    public ConfigurationProblem {
        configurations = List.copyOf(configurations);
        changeCosts = changeCosts.stream().map(List::copyOf).toList();
        options = List.copyOf(options);
        unique(configurations);
        unique(options.stream().map(ConfiguredOption::id).toList());
        int size = configurations.size();
        if (size == 0) {
            throw new OrderException("there is no configuration");
        }
        if (changeCosts.size() != size || changeCosts.stream().anyMatch(row -> row.size() != size)) {
            throw new OrderException("the costs of changes are not a table of " + size + " by " + size);
        }
        changeCosts.forEach(row -> row.forEach(ConfigurationProblem::checkCost));
        checkCost(stoppingCost);
        if (stoppingCost == Double.POSITIVE_INFINITY) {
            throw new OrderException("the stopping cost must be finite");
        }
        for (ConfiguredOption option : options) {
            if (!configurations.containsAll(option.configurations())) {
                throw new OrderException(option.id() + " is possible in " + option.configurations()
                        + ", of which not all are there: " + configurations);
            }
        }
    }

    private static void checkCost(double cost) {
        if (!(cost >= 0)) {
            throw new OrderException("a cost must be 0 or more, not " + cost);
        }
    }

    private static void unique(List<String> names) {
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                throw new OrderException(name + " is there twice");
            }
        }
    }
}
