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

    private final Map<VerdictLook, Integer> counts = new EnumMap<>(VerdictLook.class);

    int of(VerdictLook look) {
        return counts.getOrDefault(look, 0);
    }

    void count(FitMatrix matrix) {
        counts.clear();
        for (int outer = 0; outer < matrix.question().outer().size(); outer++) {
            for (int inner = 0; inner < matrix.question().inner().size(); inner++) {
                add(VerdictLook.of(matrix.answer(outer, inner).in()), 1);
            }
        }
    }

    void follow(FitMatrix matrix) {
        for (CellChange change : matrix.changes()) {
            change.before().ifPresent(before -> add(VerdictLook.of(before.in()), -1));
            add(VerdictLook.of(change.after().in()), 1);
        }
    }

    private void add(VerdictLook look, int count) {
        counts.merge(look, count, Integer::sum);
    }
}
