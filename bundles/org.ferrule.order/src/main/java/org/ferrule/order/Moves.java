/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

/**
 * What can be done in a state, and what comes of it. A move is a number: that of a set-up, or that of an option after
 * all set-ups, which stands for its next try.
 */
final class Moves {
    /** Sums of costs may differ by rounding. */
    private static final double ROUNDING = 1e-9;
    private final Model model;
    private final double discount;
    private final double budget;

    Moves(Model model) {
        this.model = model;
        discount = model.problem.rules().sameAxisDiscount();
        double limit = model.problem.rules().budget().orElse(Double.POSITIVE_INFINITY);
        budget = limit + ROUNDING * limit;
    }

    int count() {
        return model.setups + model.options;
    }

    boolean isSetup(int move) {
        return move < model.setups;
    }

    int option(int move) {
        return move - model.setups;
    }

    int level(int move) {
        return isSetup(move) ? model.setupLevel[move] : model.level[option(move)];
    }

    /** Whether needs and the rules about risks and the budget, but not that about tiers, allow it. */
    boolean isAllowed(State state, int move) {
        return (isSetup(move) ? setupAllowed(state, move) : tryAllowed(state, option(move)))
                && state.spent + cost(state, move) <= budget;
    }

    private boolean setupAllowed(State state, int setup) {
        return (state.done >> setup & 1) == 0 && (model.setupNeeds[setup] & ~state.done) == 0
                && !(state.pending && model.setupRisk[setup]);
    }

    private boolean tryAllowed(State state, int option) {
        int k = state.tries[option];
        return k < model.cost[option].length && (model.needs[option] & ~state.done) == 0
                && !isExcluded(state, option) && (model.after[option] & ~state.tried()) == 0
                && !(state.pending && k == 0 && model.risk[option]);
    }

    private boolean isExcluded(State state, int option) {
        for (long set : model.without[option]) {
            if ((set & ~state.done) == 0) {
                return true;
            }
        }
        return false;
    }

    double cost(State state, int move) {
        return isSetup(move) ? model.setupCost[move] : model.cost[option(move)][state.tries[option(move)]];
    }

    double chance(State state, int move) {
        if (isSetup(move)) {
            return 0;
        }
        int option = option(move);
        return model.chance[option][state.tries[option]] * factor(state, option);
    }

    /** The discount for what failed on the axis of the option. */
    double factor(State state, int option) {
        if (discount == 1 || model.axis[option] < 0) {
            return 1;
        }
        int failed = 0;
        for (int i = 0; i < model.options; i++) {
            failed += i != option && model.axis[i] == model.axis[option] ? state.tries[i] : 0;
        }
        return Math.pow(discount, failed);
    }

    /** The discounts of all options. */
    double[] factors(State state) {
        double[] factors = new double[model.options];
        for (int i = 0; i < model.options; i++) {
            factors[i] = factor(state, i);
        }
        return factors;
    }

    State after(State state, int move) {
        double spent = state.spent + cost(state, move);
        if (isSetup(move)) {
            return new State(state.done | 1L << move, state.tries, state.pending || model.setupRisk[move], spent);
        }
        byte[] tries = state.tries.clone();
        tries[option(move)]++;
        return new State(state.done, tries, false, spent);
    }

    Step step(State state, int move) {
        if (isSetup(move)) {
            return new Step(model.problem.setups().get(move).id(), 0, model.setupCost[move], 0);
        }
        int option = option(move);
        return new Step(model.problem.options().get(option).id(), state.tries[option] + 1, cost(state, move),
                chance(state, move));
    }
}
