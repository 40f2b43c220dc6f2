/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

/**
 * The cells of a question.
 *
 * @param question what was asked
 * @param source where its cells come from
 * @param grid the words of its cells
 */
record Cells(MatrixQuestion question, CellSource source, CellGrid grid) {

    FitCell cell(int line, int column) {
        return cell(question, line, column, grid.word(line, column));
    }

    /** The cell that a word stands for. */
    static FitCell cell(MatrixQuestion question, int line, int column, long word) {
        return CellWord.isElsewhere(word) ? new SolverCells(question).cell(line, column)
                : CellWord.cell(word, SectionNames.of(question.outer().get(line)),
                        SectionNames.of(question.inner().get(column)));
    }
}
