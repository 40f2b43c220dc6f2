/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.laws;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

import org.ferrule.order.Option;
import org.ferrule.order.OrderProblem;
import org.ferrule.order.OrderRules;
import org.ferrule.order.Setup;
import org.ferrule.order.Try;

/** Random problems: set-ups s0, s1 and options o0, o1. */
public final class RandomProblem {
    static final String AXES = "abc";
    private final Random random;

    /** @param random where the figures come from */
    public RandomProblem(Random random) {
        this.random = random;
    }

    /** A problem of at most so many set-ups, options and tries an option, under the rules. */
    public OrderProblem problem(int setups, int options, int tries, OrderRules rules) {
        List<Setup> allSetups = new ArrayList<>();
        for (int i = random.nextInt(setups + 1); i > 0; i--) {
            allSetups.add(setup(allSetups.size()));
        }
        List<Option> all = new ArrayList<>();
        for (int i = 1 + random.nextInt(options); i > 0; i--) {
            all.add(option(all.size(), allSetups.size(), 1 + random.nextInt(tries)));
        }
        return new OrderProblem(allSetups, all, random.nextInt(8) == 0 ? 5 : 20 + random.nextInt(100), rules);
    }

    /** The same problem, some options of which are impossible with some set-ups. */
    OrderProblem excluding(OrderProblem problem) {
        List<Option> options = problem.options().stream()
                .map(option -> oneIn(2) ? option : option.without(sets(problem.setups().size()))).toList();
        return new OrderProblem(problem.setups(), options, problem.stoppingCost(), problem.rules());
    }

    private Set<Set<String>> sets(int setups) {
        Set<Set<String>> sets = new HashSet<>();
        for (int i = 1 + random.nextInt(2); i > 0; i--) {
            Set<String> set = some("s", setups, 2);
            if (!set.isEmpty()) {
                sets.add(set);
            }
        }
        return sets;
    }

    /** Any mixture of the rules. */
    public OrderRules rules() {
        return new OrderRules(random.nextBoolean(), random.nextBoolean(), oneIn(3) ? random.nextDouble() : 1,
                oneIn(3) ? OptionalDouble.of(5 + random.nextInt(60)) : OptionalDouble.empty());
    }

    Setup setup(int place) {
        return new Setup("s" + place, random.nextDouble() * 10, some("s", place, 4), random.nextInt(3), oneIn(3));
    }

    Option option(int place, int setups, int tries) {
        return new Option("o" + place, tries(tries), some("s", setups, 3), some("o", place, 6), random.nextInt(3),
                oneIn(3) ? "" : AXES.substring(random.nextInt(3)).substring(0, 1), oneIn(3));
    }

    /** Costs may rise or fall, chances may not rise. */
    private List<Try> tries(int number) {
        List<Try> tries = new ArrayList<>();
        double chance = oneIn(10) ? 1 : random.nextDouble();
        for (int i = 0; i < number; i++) {
            tries.add(new Try(0.5 + random.nextDouble() * 20, oneIn(20) ? 0 : chance));
            chance = tries.get(i).chance() * (oneIn(4) ? 1 : random.nextDouble());
        }
        return tries;
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
