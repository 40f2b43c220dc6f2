/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.EnumMap;
import java.util.Map;

import org.ferrule.fit.matrix.CellChange;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.verdict.Verdict;

/** The sums of verdicts for each line of the chart; counted once, and kept up to date by what changes. */
final class LineSums {

    /** More changes than that take longer to follow than all cells to count. */
    private static final int FEW = 10_000;

    private final Map<Side, VerdictSum[]> sums = new EnumMap<>(Side.class);
    private FitMatrix counted;

    /** Returns the sum of a line, given by its index in the chart. */
    VerdictSum of(Side side, int index) {
        return sums.get(side)[index];
    }

    /** The lines are others, or all cells have been answered anew; they are counted when that is needed. */
    void forget() {
        counted = null;
    }

    /** Makes the sums those of a matrix. */
    void bring(FitMatrix matrix) {
        if (matrix == counted) {
            return;
        }
        if (counted == null || matrix.changes().count() > FEW) {
            count(matrix);
        } else {
            matrix.changes().stream().forEach(this::follow);
        }
        counted = matrix;
    }

    private void count(FitMatrix matrix) {
        VerdictSum[] outer = empty(matrix.question().outer().size());
        VerdictSum[] inner = empty(matrix.question().inner().size());
        for (int row = 0; row < outer.length; row++) {
            for (int column = 0; column < inner.length; column++) {
                Verdict verdict = matrix.in(row, column).verdict();
                outer[row].add(verdict, 1);
                inner[column].add(verdict, 1);
            }
        }
        sums.put(Side.OUTER, outer);
        sums.put(Side.INNER, inner);
    }

    private static VerdictSum[] empty(int count) {
        VerdictSum[] sums = new VerdictSum[count];
        for (int i = 0; i < count; i++) {
            sums[i] = new VerdictSum();
        }
        return sums;
    }

    private void follow(CellChange change) {
        change.before().ifPresent(before -> add(change, before.in().verdict(), -1));
        add(change, change.after().in().verdict(), 1);
    }

    private void add(CellChange change, Verdict verdict, int count) {
        of(Side.OUTER, change.outerIndex()).add(verdict, count);
        of(Side.INNER, change.innerIndex()).add(verdict, count);
    }
}
