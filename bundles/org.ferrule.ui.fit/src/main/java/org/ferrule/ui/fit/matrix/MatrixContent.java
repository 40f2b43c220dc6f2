/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.ui.fit.answer.AskedPair;

/** What the matrix shows: the answers of a chart, filtered and sorted. */
public final class MatrixContent {

    private final Map<Side, MatrixAxis> axes = new EnumMap<>(Side.class);
    private final Set<VerdictLook> wanted = EnumSet.allOf(VerdictLook.class);
    private final LookCounts counts = new LookCounts();
    private final ShownSums sums = new ShownSums(this);
    private final LineSorting sorting = new LineSorting(this);
    private Side rowSide = Side.OUTER;
    private ShownChanges changes;
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

    /** Returns which side stands in the rows. */
    public Side rowSide() {
        return rowSide;
    }

    /** Exchanges rows and columns. */
    public void transpose() {
        rowSide = rowSide.other();
    }

    /** Returns the side that stands in the rows. */
    public MatrixAxis rows() {
        return axis(rowSide);
    }

    /** Returns the side that stands in the columns. */
    public MatrixAxis columns() {
        return axis(rowSide.other());
    }

    /** Where a position is shown, counted along a side. */
    private int along(Side side, int row, int column) {
        return side == rowSide ? row : column;
    }

    /** Returns the cell that is shown at a position. */
    public FitCell cell(int row, int column) {
        return solved.matrix().cell(axis(Side.OUTER).index(along(Side.OUTER, row, column)),
                axis(Side.INNER).index(along(Side.INNER, row, column)));
    }

    /** Tells whether a single pair is shown at a position, and no group. */
    public boolean isSingle(int row, int column) {
        return row < rows().size() && column < columns().size() && !rows().isFolded(row)
                && !columns().isFolded(column);
    }

    /** Returns what is shown at a position: a cell, or the sum of those that are folded there. */
    Object value(int row, int column) {
        return isSingle(row, column) ? cell(row, column) : sums.at(row, column);
    }

    /** Returns the pair at a position; nothing where no single pair is shown. */
    public Optional<AskedPair> pairAt(int row, int column) {
        return isSingle(row, column) ? Optional.of(pair(row, column)) : Optional.empty();
    }

    /** Returns the question that is asked at a position with its whole answer, which is worked out now. */
    public AskedPair pair(int row, int column) {
        int outer = axis(Side.OUTER).index(along(Side.OUTER, row, column));
        int inner = axis(Side.INNER).index(along(Side.INNER, row, column));
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
        } else {
            counts.count(next.matrix());
        }
        sums.answered(next.matrix(), onlyChanges && !others);
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
        return sorting.byLine();
    }

    /** Sorts by a line: best first, then worst first, then as in the chart again. */
    public boolean sortBy(Side side, int position) {
        String key = axis(side).line(position).key();
        if (FoldedGroups.isGroup(key)) {
            return false;
        }
        sorting.turnLine(side, key);
        return arrange();
    }

    /** Returns the sums that are shown. */
    public ShownSums sums() {
        return sums;
    }

    /** Shows the sum of its verdicts at each line, or not. Without them lines are not sorted by them either. */
    public void showSums(boolean shown) {
        sums.show(shown);
        if (!shown) {
            sorting.forgetSums();
            arrange();
        }
    }

    /** The answers that are shown. */
    FitMatrix matrix() {
        return solved.matrix();
    }

    /** Tells whether the lines of a side are sorted by their sums, and best first; nothing if not. */
    public Optional<Boolean> sortedBySums(Side side) {
        return sorting.bySums(side);
    }

    /** Sorts the lines of a side by their sums: best first, then worst first, then as in the chart again. */
    public boolean sortBySums(Side side) {
        sorting.turnSums(side);
        return arrange();
    }

    /** Changes which lines of a side are folded or pinned, or their order, and shows it. */
    void change(Side side, Consumer<MatrixAxis> change) {
        change.accept(axis(side));
        arrange();
    }

    /** Gives the lines of a side an order of their own, which is not the chart's; an empty one takes it back. */
    public void order(Side side, List<String> keys) {
        sorting.forget(side);
        change(side, axis -> axis.order().own(keys));
    }

    /** Returns the keys of the lines of a side as they are shown, those of folded groups one by one. */
    public List<String> keysShown(Side side) {
        return axis(side).keysShown();
    }

    /** Returns the line of a side with a key, as it is shown. */
    public Optional<MatrixLine> line(Side side, String key) {
        OptionalInt position = axis(side).position(key);
        return position.isPresent() ? Optional.of(axis(side).line(position.getAsInt())) : Optional.empty();
    }

    /** Tells whether the lines of a side stand in the order of the chart and its groups, and are not sorted. */
    public boolean isUnsorted(Side side) {
        return !sorting.isSorted(side);
    }

    /** Leaves out lines in which nothing has changed; nothing shows all lines again. */
    public void showOnly(Optional<ShownChanges> wantedChanges) {
        changes = wantedChanges.orElse(null);
        arrange();
    }

    /** Returns the changes to which the matrix is restricted. */
    public Optional<ShownChanges> changes() {
        return Optional.ofNullable(changes);
    }

    /** Says what the cell at a position was, while only changes are shown; nothing where it is as it was. */
    Optional<String> before(int row, int column) {
        return changes == null || !isSingle(row, column) ? Optional.empty()
                : changes.before(axis(Side.OUTER).line(along(Side.OUTER, row, column)).key(),
                        axis(Side.INNER).line(along(Side.INNER, row, column)).key());
    }

    /** Takes back filters, so that every line of the chart is shown, and unfolds the groups of these two. */
    public void showAll(String outerKey, String innerKey) {
        wanted.addAll(EnumSet.allOf(VerdictLook.class));
        changes = null;
        axes.values().forEach(axis -> axis.filter(""));
        axis(Side.OUTER).unfold(outerKey);
        axis(Side.INNER).unfold(innerKey);
        arrange();
    }

    /** Takes back filters, sorting, folding, pins and other orders. */
    public boolean asInChart() {
        wanted.addAll(EnumSet.allOf(VerdictLook.class));
        axes.forEach((side, axis) -> {
            sorting.forget(side);
            axis.filter("");
            axis.folded().set(List.of());
            axis.order().own(List.of());
            axis.order().pin(List.of());
        });
        return arrange();
    }

    /** Returns how many cells of the whole chart have a look. */
    public int count(VerdictLook look) {
        return counts.of(look);
    }

    private boolean arrange() {
        sums.arranged();
        int[] outer = filtered(Side.OUTER);
        int[] inner = filtered(Side.INNER);
        if (wanted.size() < VerdictLook.values().length) {
            int[] all = inner;
            outer = MatrixAxis.kept(outer, o -> IntStream.of(all).anyMatch(i -> isWanted(o, i)));
            int[] left = outer;
            inner = MatrixAxis.kept(inner, i -> IntStream.of(left).anyMatch(o -> isWanted(o, i)));
        }
        boolean changed = axis(Side.OUTER).show(sorting.sorted(Side.OUTER, outer));
        return axis(Side.INNER).show(sorting.sorted(Side.INNER, inner)) || changed;
    }

    private int[] filtered(Side side) {
        MatrixAxis axis = axis(side);
        return changes == null ? axis.filtered()
                : MatrixAxis.kept(axis.filtered(), i -> changes.concerns(axis.key(i)));
    }

    private boolean isWanted(int outer, int inner) {
        return wanted.contains(VerdictLook.of(solved.matrix().in(outer, inner)));
    }

    /** The cell of a line of a side and one across. */
    FitCell cellOf(Side side, int index, int other) {
        return side == Side.OUTER ? solved.matrix().cell(index, other) : solved.matrix().cell(other, index);
    }
}
