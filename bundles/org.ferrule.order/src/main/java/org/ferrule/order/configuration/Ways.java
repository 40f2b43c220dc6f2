/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.configuration;

import java.util.List;
import java.util.stream.IntStream;

/** A problem in numbers, with the cheapest way from each configuration to each, and only options that are worth it. */
final class Ways {
    final int size;
    final double stop;
    final List<ConfiguredOption> options;
    final double[] cost;
    final double[] fails;
    /** Configurations in which an option is possible. */
    final int[][] places;
    /** Cost of the cheapest way from a configuration to another. */
    final double[][] change;

    Ways(ConfigurationProblem problem) {
        size = problem.configurations().size();
        stop = problem.stoppingCost();
        options = problem.options().stream().filter(o -> o.attempt().index() < stop).toList();
        cost = options.stream().mapToDouble(o -> o.attempt().cost()).toArray();
        fails = options.stream().mapToDouble(o -> 1 - o.attempt().chance()).toArray();
        places = options.stream().map(o -> places(problem, o)).toArray(int[][]::new);
        change = new double[size][size];
        for (int from = 0; from < size; from++) {
            for (int to = 0; to < size; to++) {
                change[from][to] = from == to ? 0 : problem.changeCosts().get(from).get(to);
            }
        }
        for (int over = 0; over < size; over++) {
            shorten(over);
        }
    }

    private static int[] places(ConfigurationProblem problem, ConfiguredOption option) {
        List<String> names = problem.configurations();
        return IntStream.range(0, names.size()).filter(i -> option.configurations().contains(names.get(i))).toArray();
    }

    /** R. W. Floyd, Commun. ACM 1962;5:345 (from memory). */
    private void shorten(int over) {
        for (double[] way : change) {
            for (int to = 0; to < size; to++) {
                way[to] = Math.min(way[to], way[over] + change[over][to]);
            }
        }
    }

    /** A try of an option in a configuration. */
    record Next(int option, int place) {
    }
}
