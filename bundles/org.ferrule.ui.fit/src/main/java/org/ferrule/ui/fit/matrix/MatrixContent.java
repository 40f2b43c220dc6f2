/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.ui.fit.answer.AskedPair;

/** What the matrix shows: the answers of a chart, filtered and sorted. */
public final class MatrixContent {

    private final Map<Side, MatrixAxis> axes = new EnumMap<>(Side.class);
    private final Set<VerdictLook> wanted = EnumSet.allOf(VerdictLook.class);
    private final LookCounts counts = new LookCounts();
    private final LineSums sums = new LineSums();
    private final Map<Side, Boolean> bySums = new EnumMap<>(Side.class);
    private boolean showsSums;
    private MatrixSort sort;
    private SolvedChart solved;

    /** Creates a content without answers. */
    public MatrixContent() {
        for (Side side : Side.values()) {
            axes.put(side, new MatrixAxis());
        }
    }

    /** Returns one side. */
    public MatrixAxis axis(Side side) {
        return axes.get(side);
    }

    /** Returns the chart that is shown, once there is one. */
    public Optional<SolvedChart> solved() {
        return Optional.ofNullable(solved);
    }

    /** Returns the cell that is shown at a position. */
    public FitCell cell(int row, int column) {
        return solved.matrix().cell(axis(Side.OUTER).index(row), axis(Side.INNER).index(column));
    }

    /** Returns the pair at a position; nothing where no single pair is shown. */
    public Optional<AskedPair> pairAt(int row, int column) {
        boolean shown = row < axis(Side.OUTER).size() && column < axis(Side.INNER).size();
        return shown ? Optional.of(pair(row, column)) : Optional.empty();
    }

    /** Returns the question that is asked at a position with its whole answer, which is worked out now. */
    public AskedPair pair(int row, int column) {
        int outer = axis(Side.OUTER).index(row);
        int inner = axis(Side.INNER).index(column);
        MatrixQuestion asked = solved.matrix().question();
        return new AskedPair(asked.question(outer, inner), solved.matrix().answer(outer, inner), asked.solver());
    }

    /**
     * Takes other answers; tells whether other lines are shown, or in another order.
     *
     * @param onlyChanges whether the answers differ from those before by their changes only
     */
    public boolean show(SolvedChart next, boolean onlyChanges) {
        solved = next;
        boolean others = axis(Side.OUTER).replace(MatrixLines.of(next.chart(), Side.OUTER));
        others |= axis(Side.INNER).replace(MatrixLines.of(next.chart(), Side.INNER));
        if (onlyChanges && !others) {
            counts.follow(next.matrix());
            if (showsSums) {
                sums.bring(next.matrix());
            } else {
                sums.forget();
            }
        } else {
            counts.count(next.matrix());
            sums.forget();
        }
        return arrange() || others;
    }

    /** Shows only the lines of a side in whose heads all words occur; tells whether that changes anything. */
    public boolean filter(Side side, String words) {
        axis(side).filter(words);
        return arrange();
    }

    /** Tells whether cells with that look are wanted. */
    public boolean wants(VerdictLook look) {
        return wanted.contains(look);
    }

    /** Wants cells with a look, or not: lines without any that is wanted are left out. */
    public boolean want(VerdictLook look, boolean want) {
        boolean changed = want ? wanted.add(look) : wanted.remove(look);
        return arrange() || changed;
    }

    /** Returns by what the lines are sorted; nothing when they stand as in the chart. */
    public Optional<MatrixSort> sort() {
        return Optional.ofNullable(sort);
    }

    /** Sorts by a line: best first, then worst first, then as in the chart again. */
    public boolean sortBy(Side side, int position) {
        String key = axis(side).line(position).key();
        boolean again = sort != null && sort.by() == side && sort.key().equals(key);
        bySums.remove(side.other());
        sort = !again ? new MatrixSort(side, key, true) : sort.bestFirst() ? new MatrixSort(side, key, false) : null;
        return arrange();
    }

    /** Tells whether each line shows the sum of its verdicts. */
    public boolean showsSums() {
        return showsSums;
    }

    /** Shows the sum of its verdicts at each line, or not. Without them lines are not sorted by them either. */
    public void showSums(boolean shown) {
        showsSums = shown;
        if (!shown) {
            bySums.clear();
            arrange();
        }
    }

    /** Returns the sum of the verdicts of a line, given by its position. */
    public VerdictSum sum(Side side, int position) {
        return sumOf(side, axis(side).index(position));
    }

    private VerdictSum sumOf(Side side, int index) {
        sums.bring(solved.matrix());
        return sums.of(side, index);
    }

    /** Tells whether the lines of a side are sorted by their sums, and best first; nothing if not. */
    public Optional<Boolean> sortedBySums(Side side) {
        return Optional.ofNullable(bySums.get(side));
    }

    /** Sorts the lines of a side by their sums: best first, then worst first, then as in the chart again. */
    public boolean sortBySums(Side side) {
        Boolean now = bySums.get(side);
        if (now == null) {
            bySums.put(side, true);
            sort = sort != null && sort.by() != side ? null : sort;
        } else if (now) {
            bySums.put(side, false);
        } else {
            bySums.remove(side);
        }
        return arrange();
    }

    /** Takes back filters and sorting. */
    public boolean asInChart() {
        sort = null;
        bySums.clear();
        wanted.addAll(EnumSet.allOf(VerdictLook.class));
        axes.values().forEach(axis -> axis.filter(""));
        return arrange();
    }

    /** Returns how many cells of the whole chart have a look. */
    public int count(VerdictLook look) {
        return counts.of(look);
    }

    private boolean arrange() {
        int[] outer = axis(Side.OUTER).filtered();
        int[] inner = axis(Side.INNER).filtered();
        if (wanted.size() < VerdictLook.values().length) {
            int[] all = inner;
            outer = MatrixAxis.kept(outer, o -> IntStream.of(all).anyMatch(i -> isWanted(o, i)));
            int[] left = outer;
            inner = MatrixAxis.kept(inner, i -> IntStream.of(left).anyMatch(o -> isWanted(o, i)));
        }
        boolean changed = axis(Side.OUTER).show(sorted(Side.OUTER, outer));
        return axis(Side.INNER).show(sorted(Side.INNER, inner)) || changed;
    }

    private boolean isWanted(int outer, int inner) {
        return wanted.contains(VerdictLook.of(solved.matrix().in(outer, inner)));
    }

    private int[] sorted(Side side, int[] indexes) {
        Boolean bestFirst = bySums.get(side);
        if (bestFirst != null) {
            return MatrixAxis.sorted(indexes, Comparator.comparing((Integer i) -> sumOf(side, i),
                    bestFirst ? VerdictSum.BEST_FIRST : VerdictSum.BEST_FIRST.reversed()));
        }
        OptionalInt line = sort == null || sort.by() == side ? OptionalInt.empty()
                : axis(sort.by()).indexOf(sort.key());
        if (line.isEmpty()) {
            return indexes;
        }
        Comparator<Integer> order = Comparator.comparing(i -> cellOf(side, i, line.getAsInt()), sort.order());
        return MatrixAxis.sorted(indexes, order);
    }

    private FitCell cellOf(Side side, int index, int other) {
        return side == Side.OUTER ? solved.matrix().cell(index, other) : solved.matrix().cell(other, index);
    }
}
