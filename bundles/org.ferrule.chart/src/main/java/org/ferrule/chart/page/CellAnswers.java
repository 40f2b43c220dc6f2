/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.Optional;

import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.FitAnswer;

/** The answers of a chart by the places of their row and column, both from 0. */
@FunctionalInterface
public interface CellAnswers {

    /** The answer there; empty where the pair was not asked. */
    Optional<FitAnswer> at(int row, int column);

    /** What else holds in all cells: names of what lies in the lumens come from there. */
    default Conditions conditions() {
        return Conditions.NONE;
    }

    /** What the cell there shows, for those who need no reasons; empty where the pair was not asked. */
    default Optional<FitCell> cell(int row, int column) {
        return at(row, column).map(FitCell::of);
    }
}
