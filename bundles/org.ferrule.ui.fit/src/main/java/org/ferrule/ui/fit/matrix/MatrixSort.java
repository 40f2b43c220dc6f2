/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Comparator;

import org.ferrule.fit.matrix.FitCell;
import org.ferrule.quantity.Length;

/**
 * Sorts the rows by what stands in one column, or the columns by what stands in one row.
 *
 * @param by the side on which that line stands
 * @param key of that line
 * @param bestFirst whether what fits best comes first
 */
public record MatrixSort(Side by, String key, boolean bestFirst) {

    private static final Length NO_CLEARANCE = new Length(Long.MIN_VALUE);

    /** Fitting ones first, those with more clearance first among them. */
    static final Comparator<FitCell> BEST_FIRST = Comparator.comparing((FitCell cell) -> cell.in().verdict())
            .thenComparing(MatrixSort::worstClearance, Comparator.reverseOrder());

    private static Length worstClearance(FitCell cell) {
        return cell.limiting().map(place -> place.worst()).orElse(NO_CLEARANCE);
    }

    Comparator<FitCell> order() {
        return bestFirst ? BEST_FIRST : BEST_FIRST.reversed();
    }
}
