/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which steps there are. Tries of different options are taken as independent.
 *
 * @param setups in any order
 * @param options in the order in which they are conventionally tried
 * @param stoppingCost what it costs when all tries have failed, in the unit of the objective; 0 or more
 * @param rules what is asked of the order
 */
public record OrderProblem(List<Setup> setups, List<Option> options, double stoppingCost, OrderRules rules) {
    private static final int MOST = 63;

    /**
     * @throws OrderException naming an id that is there twice, not there at all, or needs itself in the end, or the
     *         numbers where there are more than 63 set-ups or options
     */
    public OrderProblem {
        setups = List.copyOf(setups);
        options = List.copyOf(options);
        Checks.cost("stopping", stoppingCost);
        if (setups.size() > MOST || options.size() > MOST) {
            throw new OrderException("at most " + MOST + " set-ups and as many options can be ordered, not "
                    + setups.size() + " and " + options.size());
        }
        Map<String, Set<String>> setupNeeds = new HashMap<>();
        setups.forEach(setup -> add(setupNeeds, setup.id(), setup.setups()));
        Map<String, Set<String>> optionNeeds = new HashMap<>();
        options.forEach(option -> add(optionNeeds, option.id(), option.after()));
        for (Option option : options) {
            if (setupNeeds.containsKey(option.id())) {
                throw new OrderException("the id " + option.id() + " is there twice");
            }
            Checks.known(option.id(), option.setups(), setupNeeds.keySet());
            option.without().forEach(set -> Checks.known(option.id(), set, setupNeeds.keySet()));
        }
        Checks.noCircle(setupNeeds);
        Checks.noCircle(optionNeeds);
    }

    private static void add(Map<String, Set<String>> needs, String id, Set<String> needed) {
        if (needs.put(id, needed) != null) {
            throw new OrderException("the id " + id + " is there twice");
        }
    }
}
