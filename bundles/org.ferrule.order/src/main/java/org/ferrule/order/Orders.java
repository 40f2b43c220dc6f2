/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.List;

/** Finds the order of least expected cost. See docs/ordering.md for what is found how, and the proofs. */
public final class Orders {
    /** What a search may do, in states that a bound is found for. */
    static final long WORK = 400_000;

    private Orders() {
    }

    /** Returns the best order, or a good one with a bound on how much better the best can be. */
    public static OrderedPlan solve(OrderProblem problem) {
        Model model = new Model(problem);
        Search.Found found = new Search(model, WORK).best();
        Moves moves = new Moves(model);
        State state = State.start(model);
        List<Step> steps = new ArrayList<>();
        for (int move : found.moves()) {
            steps.add(moves.step(state, move));
            state = moves.after(state, move);
            if (steps.get(steps.size() - 1).chance() == 1) {
                break;
            }
        }
        return Plans.of(problem, steps, found.lower() >= found.upper() ? Double.POSITIVE_INFINITY : found.lower());
    }
}
