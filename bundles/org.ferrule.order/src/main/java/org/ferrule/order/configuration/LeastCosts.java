/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.configuration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The least expected cost from each state on, which is a set of tried options and a configuration. Sets are worked out
 * from the full one down, so that what follows a try is known.
 */
final class LeastCosts {
    private final Ways ways;
    /** The costs of a set begin at its number times the number of configurations. */
    private final double[] least;
    /** Of the set that is worked out, by configuration: the least cost of trying something there. */
    private final double[] here;
    /** Configurations worth going to. */
    private final int[] goals;

    LeastCosts(Ways ways) {
        this.ways = ways;
        int all = 1 << ways.options.size();
        least = new double[all * ways.size];
        here = new double[ways.size];
        goals = new int[ways.size + 1];
        for (int tried = all - 1; tried >= 0; tried--) {
            tryHere(tried);
            change(tried * ways.size, findGoals());
        }
    }

    private void tryHere(int tried) {
        Arrays.fill(here, Double.POSITIVE_INFINITY);
        for (int i = 0; i < ways.cost.length; i++) {
            if ((tried >> i & 1) == 0) {
                int then = (tried | 1 << i) * ways.size;
                for (int place : ways.places[i]) {
                    double cost = ways.cost[i] + ways.fails[i] * least[then + place];
                    if (cost < here[place]) {
                        here[place] = cost;
                    }
                }
            }
        }
    }

    /**
     * Nothing is gained by going where it is no worse to go on to where trying something costs least, since the cheapest
     * way to there is no longer than one over the other.
     */
    private int findGoals() {
        int cheapest = 0;
        for (int place = 1; place < here.length; place++) {
            cheapest = here[place] < here[cheapest] ? place : cheapest;
        }
        double least = here[cheapest];
        goals[0] = cheapest;
        int number = 1;
        for (int place = 0; place < here.length; place++) {
            if (here[place] < ways.change[place][cheapest] + least) {
                goals[number++] = place;
            }
        }
        return number;
    }

    private double throughGoals(int from, int number) {
        double best = ways.stop;
        double[] way = ways.change[from];
        for (int i = 0; i < number; i++) {
            best = Math.min(best, way[goals[i]] + here[goals[i]]);
        }
        return best;
    }

    private void change(int start, int number) {
        for (int from = 0; from < here.length; from++) {
            least[start + from] = throughGoals(from, number);
        }
    }

    /** The tries in the best order. */
    List<Ways.Next> order() {
        List<Ways.Next> order = new ArrayList<>();
        int tried = 0;
        int place = 0;
        for (Optional<Ways.Next> next = next(tried, place); next.isPresent(); next = next(tried, place)) {
            order.add(next.get());
            tried |= 1 << next.get().option();
            place = next.get().place();
        }
        return order;
    }

    private Optional<Ways.Next> next(int tried, int from) {
        double best = least[tried * ways.size + from];
        for (int i = 0; i < ways.cost.length && best < ways.stop; i++) {
            for (int place : (tried >> i & 1) == 0 ? ways.places[i] : new int[0]) {
                double cost = ways.cost[i] + ways.fails[i] * least[(tried | 1 << i) * ways.size + place];
                if (ways.change[from][place] + cost <= best) {
                    return Optional.of(new Ways.Next(i, place));
                }
            }
        }
        return Optional.empty();
    }
}
