/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.ferrule.order.Option;
import org.ferrule.order.OrderProblem;
import org.ferrule.order.OrderRules;
import org.ferrule.order.Setup;
import org.ferrule.order.Try;
import org.ferrule.order.configuration.ConfigurationProblem;
import org.ferrule.order.configuration.ConfiguredOption;

/** Ordering problems of the largest size that is to be solved exactly, the same ones every time. */
final class RandomLadders {
    private static final int SETUPS = 6;
    private static final int OPTIONS = 20;
    private static final int TRIES = 3;
    private static final int CONFIGURATIONS = 16;
    private static final int TIERS = 3;
    private static final double STOPPING = 150;

    private final Random random;

    RandomLadders(long seed) {
        random = new Random(seed);
    }

    /** Twenty options of three tries, each with one of five chances to need each of six set-ups. */
    OrderProblem ladder(OrderRules rules) {
        List<Setup> setups = new ArrayList<>();
        for (int i = 0; i < SETUPS; i++) {
            setups.add(
                    new Setup("s" + i, 1 + 9 * random.nextDouble(), some("s", i, 5), random.nextInt(TIERS), oneIn(4)));
        }
        List<Option> options = new ArrayList<>();
        for (int i = 0; i < OPTIONS; i++) {
            options.add(new Option("o" + i, tries(), some("s", SETUPS, 5), oneIn(6) && i > 0 ? Set.of("o" + (i - 1))
                    : Set.of(), random.nextInt(TIERS), "", oneIn(4)));
        }
        return new OrderProblem(setups, options, STOPPING, rules);
    }

    private List<Try> tries() {
        List<Try> tries = new ArrayList<>();
        double cost = 1 + 15 * random.nextDouble();
        double chance = 0.05 + 0.5 * random.nextDouble();
        for (int k = 0; k < TRIES; k++) {
            tries.add(new Try(cost, chance));
            cost *= 0.6 + 0.8 * random.nextDouble();
            chance *= 0.3 + 0.7 * random.nextDouble();
        }
        return tries;
    }

    /** Twenty options, each possible in a few of sixteen configurations. */
    ConfigurationProblem configurations() {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < CONFIGURATIONS; i++) {
            names.add("c" + i);
        }
        List<List<Double>> changes = new ArrayList<>();
        for (int i = 0; i < CONFIGURATIONS; i++) {
            List<Double> row = new ArrayList<>();
            names.forEach(any -> row.add(1 + 9 * random.nextDouble()));
            changes.add(row);
        }
        List<ConfiguredOption> options = new ArrayList<>();
        for (int i = 0; i < OPTIONS; i++) {
            options.add(new ConfiguredOption("o" + i, new Try(1 + 10 * random.nextDouble(),
                    0.05 + 0.5 * random.nextDouble()), some("c", CONFIGURATIONS, 4)));
        }
        return new ConfigurationProblem(names, changes, options, STOPPING);
    }

    private Set<String> some(String letter, int places, int oneIn) {
        Set<String> some = new HashSet<>();
        for (int i = 0; i < places; i++) {
            if (oneIn(oneIn)) {
                some.add(letter + i);
            }
        }
        return some;
    }

    private boolean oneIn(int number) {
        return random.nextInt(number) == 0;
    }
}
