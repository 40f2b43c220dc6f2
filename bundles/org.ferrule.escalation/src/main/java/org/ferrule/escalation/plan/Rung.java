/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.order.Placement;
import org.ferrule.shelf.stock.Pick;

/**
 * One step of a plan.
 *
 * @param number from 1
 * @param move technique or set-up
 * @param attempt 0 for a set-up, else which try of the technique it is, counted from the first one ever
 * @param equipment the system before and after, and who plays each role
 * @param taken units that it takes from the shelf; later tries of one technique go on with those of the first
 * @param costs of this step
 * @param placement why it stands here: its index, and the chance that it is reached
 * @param expected used up when this step is over, as a mean, what was used before planning included
 * @param worst used up when this step is over, if no earlier one succeeded
 * @param beyond resources whose budget the worst case exceeds by now
 * @param delivery whether the device to be delivered passes the system that the step leaves; absent when none is named
 *                 or it cannot be asked
 */
public record Rung(int number, Move move, int attempt, MoveAnswer equipment, List<Pick> taken, Costs costs,
        Placement placement, Costs expected, Costs worst, Set<Resource> beyond, Optional<Verdict> delivery) {
    public Rung {
        Objects.requireNonNull(move, "move");
        Objects.requireNonNull(equipment, "equipment");
        taken = List.copyOf(taken);
        Objects.requireNonNull(costs, "costs");
        Objects.requireNonNull(placement, "placement");
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(worst, "worst");
        beyond = Set.copyOf(beyond);
        Objects.requireNonNull(delivery, "delivery");
    }

    /** Whether it brings something in, rather than trying something. */
    public boolean isSetup() {
        return attempt == 0;
    }

    /** Whether it is outside the label of what it uses. */
    public boolean isOffLabel() {
        return move.advice().offLabel().isPresent();
    }
}
