/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.order.OrderProblem;
import org.ferrule.order.OrderedPlan;

/**
 * What to do next, and after that, and when to stop.
 *
 * @param file the case, with its log
 * @param ladder where the techniques come from
 * @param progress where the case stands
 * @param wireCheck what comes before everything
 * @param looks techniques that only look, in the conventional order
 * @param rungs in order; empty when nothing can be done, or the device is across
 * @param leftOut what is not in the plan, and why
 * @param exits techniques that end the ladder
 * @param bailOut what must be at hand
 * @param delivery whether the device to be delivered passes the system in place; absent when none is named
 * @param stops how the stop rules stand
 * @param problem what was ordered, in the unit of the objective
 * @param order the order, with its bound
 */
public record Plan(CaseFile file, Ladder ladder, Progress progress, WireCheck wireCheck, List<Technique> looks,
        List<Rung> rungs, List<LeftOut> leftOut, List<Technique> exits, List<BailOut> bailOut,
        Optional<MoveAnswer.Single> delivery, List<StopStatus> stops, OrderProblem problem, OrderedPlan order) {
    public Plan {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(ladder, "ladder");
        Objects.requireNonNull(progress, "progress");
        Objects.requireNonNull(wireCheck, "wireCheck");
        looks = List.copyOf(looks);
        rungs = List.copyOf(rungs);
        leftOut = List.copyOf(leftOut);
        exits = List.copyOf(exits);
        bailOut = List.copyOf(bailOut);
        Objects.requireNonNull(delivery, "delivery");
        stops = List.copyOf(stops);
        Objects.requireNonNull(problem, "problem");
        Objects.requireNonNull(order, "order");
    }

    /** Whether anything on the ladder can be done. */
    public boolean canGoOn() {
        return rungs.stream().anyMatch(rung -> !rung.isSetup());
    }

    /** The next step, if there is one. */
    public Optional<Rung> next() {
        return rungs.stream().findFirst();
    }

    /** What is used up by now. */
    public Costs used() {
        return file.used();
    }
}
