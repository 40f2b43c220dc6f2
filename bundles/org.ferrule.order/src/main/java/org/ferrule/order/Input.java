/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.List;

/**
 * One of the figures that a problem is made of.
 *
 * @param kind which sort of figure
 * @param id of the option or set-up; empty for the stopping cost
 * @param attempt number of the try from 1; 0 where it is no try
 */
public record Input(Kind kind, String id, int attempt) {

    /** Sorts of figures. */
    public enum Kind {
        /** Cost of a set-up. */
        SETUP_COST,
        /** Cost of a try. */
        TRY_COST,
        /** Chance of a try. */
        TRY_CHANCE,
        /** Cost of stopping. */
        STOPPING_COST
    }

    /** Returns all figures of a problem. */
    public static List<Input> of(OrderProblem problem) {
        List<Input> all = new ArrayList<>();
        all.add(new Input(Kind.STOPPING_COST, "", 0));
        problem.setups().forEach(setup -> all.add(new Input(Kind.SETUP_COST, setup.id(), 0)));
        for (Option option : problem.options()) {
            for (int k = 1; k <= option.tries().size(); k++) {
                all.add(new Input(Kind.TRY_COST, option.id(), k));
                all.add(new Input(Kind.TRY_CHANCE, option.id(), k));
            }
        }
        return all;
    }

    /** Returns the figure in a problem. */
    public double in(OrderProblem problem) {
        return switch (kind) {
            case STOPPING_COST -> problem.stoppingCost();
            case SETUP_COST -> setup(problem).cost();
            case TRY_COST -> option(problem).tries().get(attempt - 1).cost();
            case TRY_CHANCE -> option(problem).tries().get(attempt - 1).chance();
        };
    }

    /**
     * Returns the problem with another figure here.
     *
     * @throws OrderException if the figure is not one that may stand here
     */
    public OrderProblem with(OrderProblem problem, double value) {
        List<Setup> setups = problem.setups();
        List<Option> options = problem.options();
        double stop = problem.stoppingCost();
        switch (kind) {
            case STOPPING_COST -> stop = value;
            case SETUP_COST -> setups = setups.stream().map(s -> s.id().equals(id) ? s.withCost(value) : s).toList();
            default -> options = options.stream().map(o -> o.id().equals(id) ? with(o, value) : o).toList();
        }
        return new OrderProblem(setups, options, stop, problem.rules());
    }

    private Option with(Option option, double value) {
        List<Try> tries = new ArrayList<>(option.tries());
        Try old = tries.get(attempt - 1);
        tries.set(attempt - 1, kind == Kind.TRY_COST ? new Try(value, old.chance()) : new Try(old.cost(), value));
        return option.withTries(tries);
    }

    /** Returns the least figure that may stand here beside the others: 0, or the chance of the next try. */
    double least(OrderProblem problem) {
        return kind == Kind.TRY_CHANCE && attempt < option(problem).tries().size()
                ? option(problem).tries().get(attempt).chance()
                : 0;
    }

    /**
     * Returns the largest figure that makes a difference here: the chance of the try before, or a cost at which
     * whatever it is about is surely not worth it; for the stopping cost one at which everything is.
     */
    double largest(OrderProblem problem) {
        return switch (kind) {
            case TRY_CHANCE -> attempt == 1 ? 1 : option(problem).tries().get(attempt - 2).chance();
            case SETUP_COST, TRY_COST -> Math.max(in(problem), problem.stoppingCost());
            case STOPPING_COST -> Math.max(in(problem), allCosts(problem) / leastChance(problem));
        };
    }

    private static double allCosts(OrderProblem problem) {
        return problem.setups().stream().mapToDouble(Setup::cost).sum() + problem.options().stream()
                .flatMap(option -> option.tries().stream()).mapToDouble(Try::cost).sum();
    }

    private static double leastChance(OrderProblem problem) {
        return problem.options().stream().flatMap(option -> option.tries().stream()).mapToDouble(Try::chance)
                .filter(chance -> chance > 0).min().orElse(1);
    }

    private Setup setup(OrderProblem problem) {
        return problem.setups().stream().filter(s -> s.id().equals(id)).findFirst()
                .orElseThrow(() -> new OrderException("there is no set-up " + id));
    }

    private Option option(OrderProblem problem) {
        return problem.options().stream().filter(o -> o.id().equals(id) && attempt <= o.tries().size()).findFirst()
                .orElseThrow(() -> new OrderException("there is no try " + attempt + " of " + id));
    }
}
