/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import org.ferrule.fit.FitSolver;

/** Asks the solver about every cell. */
final class SolverSource implements CellSource {
    private final MatrixQuestion question;
    private final FitSolver solver;

    SolverSource(MatrixQuestion question) {
        this.question = question;
        this.solver = question.solver().forCells(question.terms());
    }

    FitSolver solver() {
        return solver;
    }

    @Override
    public CellSource next(MatrixQuestion next, Comparison comparison) {
        return QuickSource.of(next);
    }

    @Override
    public Reader reader() {
        return new SolverReader();
    }

    /** Asks for one word after the other. */
    private final class SolverReader implements Reader {
        @Override
        public long word(int line, int column) {
            return SolverSource.this.word(line, column);
        }

        @Override
        public void tileLine(int line, int tileColumn, long[] words, int at) {
            int from = tileColumn * CellGrid.SIDE;
            int end = Math.min(question.inner().size(), from + CellGrid.SIDE);
            for (int column = from; column < end; column++) {
                words[at + column - from] = word(line, column);
            }
        }
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
