/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Comparator;

import org.ferrule.fit.passage.PhaseAnswer;
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
    static final Comparator<PhaseAnswer> BEST_FIRST = Comparator.comparing(PhaseAnswer::verdict)
            .thenComparing(MatrixSort::worstClearance, Comparator.reverseOrder());

    private static Length worstClearance(PhaseAnswer answer) {
        return answer.clearance().map(c -> c.worst()).orElse(NO_CLEARANCE);
    }

    Comparator<PhaseAnswer> order() {
        return bestFirst ? BEST_FIRST : BEST_FIRST.reversed();
    }
}
