/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.List;
import java.util.Objects;

import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.technique.Move;

/**
 * A technique or a set-up that is not in the plan.
 *
 * @param move the technique or the set-up
 * @param why the kind of reason
 * @param lacks why it cannot be done; empty where it could be
 * @param remedies the smallest changes that would make it possible, smallest first; empty where none was found
 */
public record LeftOut(Move move, Why why, List<Lack> lacks, List<Remedy> remedies) {

    /** Why something is not in a plan. */
    public enum Why {
        /** It cannot be done as things stand. */
        IMPOSSIBLE,
        /** All its tries were made. */
        EXHAUSTED,
        /** It was tried and failed, as a set-up. */
        FAILED,
        /** A technique that has to come before it cannot be done. */
        NOT_AFTER,
        /** It costs more per chance than stopping: not worth it. */
        NOT_WORTH_IT,
        /** It would be worth it, but what else is planned, a budget or a rule of the order leaves no place for it. */
        NO_PLACE,
        /** Nothing in the plan needs it. */
        NOT_NEEDED
    }

    public LeftOut {
        Objects.requireNonNull(move, "move");
        Objects.requireNonNull(why, "why");
        lacks = List.copyOf(lacks);
        remedies = List.copyOf(remedies);
    }
}
