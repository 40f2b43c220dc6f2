/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import org.ferrule.fit.FitSolver;

/** Asks the solver about cells, one by one. */
final class SolverCells {
    private final MatrixQuestion question;
    private final FitSolver solver;

    SolverCells(MatrixQuestion question) {
        this.question = question;
        this.solver = question.solver().forCells(question.terms());
    }

    FitSolver solver() {
        return solver;
    }

    /** The word of a cell. */
    long word(int line, int column) {
        return CellWord.of(cell(line, column), SectionNames.of(question.outer().get(line)),
                SectionNames.of(question.inner().get(column)));
    }

    /** What a cell shows. */
    FitCell cell(int line, int column) {
        return FitCell.of(solver.answer(question.question(line, column)));
    }
}
