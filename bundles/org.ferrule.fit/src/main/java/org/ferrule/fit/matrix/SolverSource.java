/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.List;

import org.ferrule.fit.FitSolver;

/** Asks the solver about every cell. */
final class SolverSource implements CellSource {
    private final MatrixQuestion question;
    private final FitSolver solver;

    SolverSource(MatrixQuestion question) {
        this.question = question;
        this.solver = question.solver();
    }

    @Override
    public Reader reader() {
        return this::word;
    }

    private long word(int line, int column) {
        List<String> lumenNames = SectionNames.of(question.outer().get(line));
        List<String> deviceNames = SectionNames.of(question.inner().get(column));
        return CellWord.of(FitCell.of(solver.answer(question.question(line, column))), lumenNames, deviceNames);
    }
}
