/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.Objects;

import org.ferrule.chart.words.PairNames;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;

/**
 * A question about two devices with its answer: what the parts of the workbench select and explain. Immutable.
 *
 * @param question what was asked
 * @param answer what came out
 * @param solver that answered
 */
public record AskedPair(FitQuestion question, FitAnswer answer, FitSolver solver) {

    /** Checks that nothing is missing. */
    public AskedPair {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(answer, "answer");
        Objects.requireNonNull(solver, "solver");
    }

    /** Works the answer out with more to show; takes its time, so not on the display's thread. */
    public FitAnswer inDetail() {
        return solver.inDetail().answer(question);
    }

    /** Returns the same question with another answer. */
    AskedPair with(FitAnswer other) {
        return new AskedPair(question, other, solver);
    }

    /** Returns what the two devices are called. */
    public PairNames names() {
        return PairNames.of(question);
    }
}
