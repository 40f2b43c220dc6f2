/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** By what the lines of the matrix are sorted: the cells of a line across them, or the sums of their verdicts. */
final class LineSorting {

    private final MatrixContent content;
    private final Map<Side, Boolean> bySums = new EnumMap<>(Side.class);
    private MatrixSort sort;

    LineSorting(MatrixContent content) {
        this.content = content;
    }

    Optional<MatrixSort> byLine() {
        return Optional.ofNullable(sort);
    }

    /** Tells whether the lines of a side are sorted by their sums, and best first; nothing if not. */
    Optional<Boolean> bySums(Side side) {
        return Optional.ofNullable(bySums.get(side));
    }

    /** Best first, then worst first, then as in the chart again. */
    void turnLine(Side side, String key) {
        boolean again = sort != null && sort.by() == side && sort.key().equals(key);
        bySums.remove(side.other());
        sort = !again ? new MatrixSort(side, key, true) : sort.bestFirst() ? new MatrixSort(side, key, false) : null;
    }

    /** Best first, then worst first, then as in the chart again. */
    void turnSums(Side side) {
        Boolean now = bySums.get(side);
        forget(side);
        if (now == null || now) {
            bySums.put(side, now == null);
        }
    }

    /** The lines of a side are not sorted any more. */
    void forget(Side side) {
        bySums.remove(side);
        sort = sort != null && sort.by() != side ? null : sort;
    }

    void forgetSums() {
        bySums.clear();
    }

    boolean isSorted(Side side) {
        return bySums.containsKey(side) || sort != null && sort.by() != side;
    }

    int[] sorted(Side side, int[] indexes) {
        Boolean bestFirst = bySums.get(side);
        if (bestFirst != null) {
            return MatrixAxis.sorted(indexes, Comparator.comparing((Integer i) -> content.sums().ofLine(side, i),
                    bestFirst ? VerdictSum.BEST_FIRST : VerdictSum.BEST_FIRST.reversed()));
        }
        OptionalInt line = sort == null || sort.by() == side ? OptionalInt.empty()
                : content.axis(sort.by()).indexOf(sort.key());
        return line.isEmpty() ? indexes : MatrixAxis.sorted(indexes,
                Comparator.comparing(i -> content.cellOf(side, i, line.getAsInt()), sort.order()));
    }
}
