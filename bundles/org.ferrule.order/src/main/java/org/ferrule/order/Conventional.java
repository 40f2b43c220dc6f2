/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The order in which the options are given, for comparison with the best one: the steps of the plan, each option with all
 * its tries before the next, a set-up when it is first needed, as far as the rules allow it.
 */
public final class Conventional {
    private final Model model;
    private final Moves moves;
    private final Search search;
    private final Set<String> wantedSetups = new HashSet<>();
    private final int[] wantedTries;
    private final Set<State> dead = new HashSet<>();
    private final List<Step> steps = new ArrayList<>();

    private Conventional(OrderProblem problem, OrderedPlan plan) {
        model = new Model(problem);
        moves = new Moves(model);
        search = new Search(model, Orders.WORK);
        wantedTries = new int[model.options];
        for (Step step : plan.steps()) {
            if (step.isSetup()) {
                wantedSetups.add(step.id());
            }
        }
        for (int i = 0; i < model.options; i++) {
            String id = problem.options().get(i).id();
            wantedTries[i] = (int) plan.steps().stream().filter(s -> s.id().equals(id)).count();
        }
    }

    /**
     * Returns the steps of a plan in the order in which the options are given. What it costs more than the plan is what
     * that order gives up. Where tiers come first it may cost less: a plan takes the best order of each tier for itself,
     * even if another one would leave better chances to the next tier, where failed tries tell against their axis, or
     * would open the next tier sooner, where no new risk may follow another.
     *
     * @return the plan; its lower bound is that of the plan given. Empty if the rules allow no such order of just these
     *         steps
     */
    public static Optional<OrderedPlan> of(OrderProblem problem, OrderedPlan plan) {
        Conventional conventional = new Conventional(problem, plan);
        return conventional.complete(State.start(conventional.model))
                ? Optional.of(Plans.of(problem, conventional.steps, plan.lowerBound()))
                : Optional.empty();
    }

    private boolean complete(State state) {
        if (steps.size() == wantedSetups.size() + tries()) {
            return true;
        }
        if (dead.contains(state)) {
            return false;
        }
        for (int option = 0; option < model.options; option++) {
            if (state.tries[option] < wantedTries[option] && towards(state, option)) {
                return true;
            }
        }
        dead.add(state);
        return false;
    }

    private int tries() {
        int sum = 0;
        for (int wanted : wantedTries) {
            sum += wanted;
        }
        return sum;
    }

    /** The next try of the option, or else a set-up that it lacks, and all the rest. */
    private boolean towards(State state, int option) {
        if (take(state, model.setups + option)) {
            return true;
        }
        long lacking = model.neededSetups(option) & ~state.done;
        for (int setup = 0; setup < model.setups; setup++) {
            if ((lacking >> setup & 1) != 0 && take(state, setup)) {
                return true;
            }
        }
        return false;
    }

    private boolean take(State state, int move) {
        if (!moves.isAllowed(state, move) || search.isLowerPossible(moves.level(move), state)) {
            return false;
        }
        steps.add(moves.step(state, move));
        if (complete(moves.after(state, move))) {
            return true;
        }
        steps.remove(steps.size() - 1);
        return false;
    }
}
