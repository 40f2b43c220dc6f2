/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.List;
import java.util.Objects;

import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.UnitPreferences;

/**
 * All that a chart shows.
 *
 * @param imprint title, audience, author, revision, date
 * @param basis rule set, libraries, conditions
 * @param rows outer devices, as they stand from top to bottom
 * @param columns inner devices, as they stand from left to right
 * @param answers by row and column
 * @param footnotes of the author; they stand on every page
 * @param units in which figures are written
 * @param number which clearance the cells show
 * @param paper on which it is laid out
 */
public record ChartContent(Imprint imprint, Basis basis, List<Head> rows, List<Head> columns, CellAnswers answers,
        List<String> footnotes, UnitPreferences units, ShownNumber number, PaperFormat paper) {

    public ChartContent {
        Objects.requireNonNull(imprint, "imprint");
        Objects.requireNonNull(basis, "basis");
        rows = List.copyOf(rows);
        columns = List.copyOf(columns);
        Objects.requireNonNull(answers, "answers");
        footnotes = List.copyOf(footnotes);
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(paper, "paper");
    }

    /** How the devices of a cell are called, and those that lie in the lumen with them. */
    public PairNames names(int row, int column) {
        Head outer = rows.get(row);
        Head inner = columns.get(column);
        return new PairNames(outer.id(), outer.title(), inner.id(), inner.title()).with(answers.conditions());
    }
}
