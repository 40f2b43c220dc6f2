/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.EnumMap;
import java.util.Map;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.matrix.CellChange;
import org.ferrule.fit.matrix.FitMatrix;

/** How many cells have each look; counted once, and kept up to date by what changes. */
final class LookCounts {

    /** More changes than that take longer to follow than all cells to count. */
    private static final int FEW = 10_000;

    private final Map<VerdictLook, Integer> counts = new EnumMap<>(VerdictLook.class);

    int of(VerdictLook look) {
        return counts.getOrDefault(look, 0);
    }

    void count(FitMatrix matrix) {
        counts.clear();
        matrix.verdicts().forEach((verdict, count) -> add(VerdictLook.of(verdict), count));
    }

    void follow(FitMatrix matrix) {
        if (matrix.changes().count() > FEW) {
            count(matrix);
        } else {
            matrix.changes().stream().forEach(this::follow);
        }
    }

    private void follow(CellChange change) {
        change.before().ifPresent(before -> add(VerdictLook.of(before.in()), -1));
        add(VerdictLook.of(change.after().in()), 1);
    }

    private void add(VerdictLook look, int count) {
        counts.merge(look, count, Integer::sum);
    }
}
