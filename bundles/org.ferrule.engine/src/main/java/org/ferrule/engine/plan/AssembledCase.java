/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.List;
import java.util.Objects;

import org.ferrule.escalation.equipment.Instruments;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Planner;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.technique.Ladder;

/**
 * A case, ready to be planned. May be used from any thread.
 *
 * @param file the case
 * @param ladder the techniques
 * @param stock what is on the shelf
 * @param instruments the devices, the rules and the solver
 * @param problems what cannot be planned with as it is written, in all of the documents
 */
public record AssembledCase(CaseFile file, Ladder ladder, Stock stock, Instruments instruments,
        List<PlanProblem> problems) {
    public AssembledCase {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(ladder, "ladder");
        Objects.requireNonNull(stock, "stock");
        Objects.requireNonNull(instruments, "instruments");
        problems = List.copyOf(problems);
    }

    /** Plans it. */
    public Plan plan() {
        return new Planner(instruments, ladder).plan(file, stock);
    }
}
