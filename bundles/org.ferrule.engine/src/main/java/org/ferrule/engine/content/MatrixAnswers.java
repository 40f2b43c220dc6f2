/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.engine.content;

import java.util.Optional;

import org.ferrule.chart.page.CellAnswers;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.FitAnswer;

/** The answers of a chart in which every pair was asked. */
record MatrixAnswers(FitMatrix matrix) implements CellAnswers {

    @Override
    public Optional<FitAnswer> at(int row, int column) {
        return Optional.of(matrix.answer(row, column));
    }

    @Override
    public Conditions conditions() {
        return matrix.question().conditions();
    }

    @Override
    public Optional<FitCell> cell(int row, int column) {
        return Optional.of(matrix.cell(row, column));
    }
}
