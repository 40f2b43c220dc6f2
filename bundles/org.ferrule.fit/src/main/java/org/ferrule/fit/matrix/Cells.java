/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

/**
 * The cells of a question.
 *
 * @param question what was asked
 * @param names the names of its sections
 * @param source where its cells come from
 * @param grid the words of its cells
 */
record Cells(MatrixQuestion question, SectionNames names, CellSource source, CellGrid grid) {

    FitCell cell(int line, int column) {
        return cell(question, names, line, column, grid.word(line, column));
    }

    /** The cell that a word stands for. */
    static FitCell cell(MatrixQuestion question, SectionNames names, int line, int column, long word) {
        return CellWord.isElsewhere(word) ? new SolverCells(question).cell(line, column)
                : CellWord.cell(word, names.ofLine(line), names.ofColumn(column));
    }
}
