/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ready;

import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.plansheet.words.PlanWords;

/**
 * A case of the project: with its plan, or with what keeps it from being planned.
 *
 * @param file its document
 * @param title of the case
 * @param plan absent when it cannot be planned
 * @param words for the plan; absent with it
 * @param problem why it cannot be planned; empty when it can
 */
record ReadyCase(IFile file, String title, Optional<Plan> plan, Optional<PlanWords> words, String problem) {

    /** Returns the mark of a technique; nothing when the case has no such technique, or no plan. */
    Optional<ReadyMark> mark(String move) {
        return plan.flatMap(p -> ReadyMark.of(p, move));
    }

    /** Returns what is behind a mark, in a sentence; empty when there is nothing to be said. */
    String why(String move) {
        Optional<LeftOut> leftOut = plan.flatMap(
                p -> p.leftOut().stream().filter(l -> l.move().id().equals(move)).findFirst());
        return leftOut.flatMap(l -> words.map(w -> w.leftOut().why(l))).orElse("");
    }
}
