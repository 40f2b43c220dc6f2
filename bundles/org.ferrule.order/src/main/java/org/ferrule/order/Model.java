/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** A problem in numbers: set-ups and options by their places, what they need as bits. */
final class Model {
    final OrderProblem problem;
    final int setups;
    final int options;
    /** Cost of each set-up. */
    final double[] setupCost;
    /** By option and try. */
    final double[][] cost;
    /** By option and try. */
    final double[][] chance;
    /** Set-ups that a set-up needs. */
    final long[] setupNeeds;
    /** Set-ups that an option needs. */
    final long[] needs;
    /** Sets of set-ups with which an option cannot be tried. */
    final long[][] without;
    /** Whether some option has such a set. */
    final boolean exclusive;
    /** Options that must have been tried before an option. */
    final long[] after;
    /** Options that another is after. */
    final long gates;
    /** Tiers by their rank, so that the lowest is 0. */
    final int[] setupLevel;
    final int[] level;
    final int levels;
    final boolean[] setupRisk;
    final boolean[] risk;
    /** Number of the axis; -1 for none. */
    final int[] axis;
    final double stop;

    Model(OrderProblem problem) {
        this.problem = problem;
        List<Setup> allSetups = problem.setups();
        List<Option> all = problem.options();
        setups = allSetups.size();
        options = all.size();
        stop = problem.stoppingCost();
        setupCost = allSetups.stream().mapToDouble(Setup::cost).toArray();
        cost = new double[options][];
        chance = new double[options][];
        Map<String, Integer> setupPlace = places(allSetups.stream().map(Setup::id).toList());
        Map<String, Integer> place = places(all.stream().map(Option::id).toList());
        setupNeeds = allSetups.stream().mapToLong(setup -> bits(setup.setups(), setupPlace)).toArray();
        needs = all.stream().mapToLong(option -> bits(option.setups(), setupPlace)).toArray();
        without = all.stream()
                .map(option -> option.without().stream().mapToLong(set -> bits(set, setupPlace)).toArray())
                .toArray(long[][]::new);
        exclusive = all.stream().anyMatch(option -> !option.without().isEmpty());
        after = all.stream().mapToLong(option -> bits(option.after(), place)).toArray();
        long waitedFor = 0;
        for (int i = 0; i < options; i++) {
            cost[i] = all.get(i).tries().stream().mapToDouble(Try::cost).toArray();
            chance[i] = all.get(i).tries().stream().mapToDouble(Try::chance).toArray();
            waitedFor |= after[i];
        }
        gates = waitedFor;
        TreeSet<Integer> tiers = new TreeSet<>();
        allSetups.forEach(setup -> tiers.add(setup.tier()));
        all.forEach(option -> tiers.add(option.tier()));
        boolean sorted = problem.rules().tiersFirst();
        levels = sorted ? Math.max(1, tiers.size()) : 1;
        setupLevel = allSetups.stream().mapToInt(s -> sorted ? tiers.headSet(s.tier()).size() : 0).toArray();
        level = all.stream().mapToInt(o -> sorted ? tiers.headSet(o.tier()).size() : 0).toArray();
        setupRisk = new boolean[setups];
        risk = new boolean[options];
        boolean careful = problem.rules().oneNewRiskAStep();
        for (int i = 0; i < setups; i++) {
            setupRisk[i] = careful && allSetups.get(i).newRisk();
        }
        Map<String, Integer> axes = new HashMap<>();
        axis = new int[options];
        for (int i = 0; i < options; i++) {
            risk[i] = careful && all.get(i).newRisk();
            String name = all.get(i).axis();
            axis[i] = name.isEmpty() ? -1 : axes.computeIfAbsent(name, any -> axes.size());
        }
    }

    private static Map<String, Integer> places(List<String> ids) {
        Map<String, Integer> places = new HashMap<>();
        ids.forEach(id -> places.put(id, places.size()));
        return places;
    }

    private static long bits(Set<String> ids, Map<String, Integer> places) {
        return ids.stream().mapToLong(id -> 1L << places.get(id)).reduce(0, (a, b) -> a | b);
    }

    boolean isGate(int option) {
        return (gates >> option & 1) != 0;
    }

    /** The set-ups that an option needs, and those that they need. */
    long neededSetups(int option) {
        long all = needs[option];
        long before;
        do {
            before = all;
            for (int i = 0; i < setups; i++) {
                all |= (all >> i & 1) == 0 ? 0 : setupNeeds[i];
            }
        } while (all != before);
        return all;
    }

    /** The number of a step among the moves. */
    int move(Step step) {
        for (int i = 0; i < setups; i++) {
            if (problem.setups().get(i).id().equals(step.id())) {
                return i;
            }
        }
        for (int i = 0; i < options; i++) {
            if (problem.options().get(i).id().equals(step.id())) {
                return setups + i;
            }
        }
        throw new OrderException("there is no option or set-up " + step.id());
    }
}
