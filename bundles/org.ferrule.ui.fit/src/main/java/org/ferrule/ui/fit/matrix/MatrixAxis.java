/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One side of the matrix as it is looked at. An index says where a line stands in the chart, a position where it is
 * shown.
 */
public final class MatrixAxis {

    private List<MatrixLine> lines = List.of();
    private final FoldedGroups folded = new FoldedGroups();
    private final LineOrder order = new LineOrder();
    private String filter = "";
    private int[][] shown = {};

    /** Returns how many lines are shown. */
    public int size() {
        return shown.length;
    }

    /** Returns how many lines there are. */
    public int total() {
        return lines.size();
    }

    /** Returns where the line that is shown at a position stands in the chart; of a folded group, its first line. */
    public int index(int position) {
        return shown[position][0];
    }

    /** Returns where the lines that are shown at a position stand in the chart: several, where a group is folded. */
    int[] indexes(int position) {
        return shown[position];
    }

    /** Tells whether a folded group is shown at a position, and no single line. */
    public boolean isFolded(int position) {
        return folded.contains(lines.get(index(position)).head().group());
    }

    /** Returns the key of a line of the chart. */
    String key(int index) {
        return lines.get(index).key();
    }

    /** Returns the line that is shown at a position; for a folded group, one that stands for all of its lines. */
    public MatrixLine line(int position) {
        MatrixLine first = lines.get(index(position));
        return isFolded(position) ? FoldedGroups.line(first.head().group(), shown[position].length) : first;
    }

    /** Returns the key of what is shown for a line of the chart: its own, or that of its folded group. */
    String keyShowing(int index) {
        return IntStream.range(0, size()).filter(i -> IntStream.of(shown[i]).anyMatch(member -> member == index))
                .mapToObj(i -> line(i).key()).findFirst().orElse(lines.get(index).key());
    }

    /** Tells whether the line with a key is pinned to the edge. */
    public boolean isPinned(String key) {
        return order.isPinned(key);
    }

    /** Unfolds the group of a line. */
    void unfold(String key) {
        indexOf(key).ifPresent(index -> {
            String group = lines.get(index).head().group();
            if (folded.contains(group)) {
                folded.turn(group);
            }
        });
    }

    /** Folds all groups, or none. */
    void foldAll(boolean fold) {
        folded.set(fold ? groups() : List.of());
    }

    /** Returns the names of all groups. */
    private List<String> groups() {
        return lines.stream().map(line -> line.head().group()).filter(group -> !group.isEmpty()).distinct().toList();
    }

    /** Returns which groups are folded. */
    FoldedGroups folded() {
        return folded;
    }

    /** Returns the order that differs from the chart's, and what is pinned. */
    LineOrder order() {
        return order;
    }

    /** Returns the keys of the lines as they are shown, those of folded groups one by one. */
    List<String> keysShown() {
        return Stream.of(shown).flatMapToInt(IntStream::of).mapToObj(i -> lines.get(i).key()).toList();
    }

    /** Returns where the line with a key is shown. */
    public OptionalInt position(String key) {
        return IntStream.range(0, shown.length).filter(i -> line(i).key().equals(key)).findFirst();
    }

    /** Returns where the line with a key stands in the chart. */
    OptionalInt indexOf(String key) {
        return IntStream.range(0, lines.size()).filter(i -> lines.get(i).key().equals(key)).findFirst();
    }

    /** Returns the words of the filter. */
    public String filter() {
        return filter;
    }

    void filter(String words) {
        filter = words;
    }

    /** Takes the lines of another answer; tells whether they are other lines, and not only other figures. */
    boolean replace(List<MatrixLine> next) {
        boolean same = keys(next).equals(keys(lines)) && groups(next).equals(groups(lines));
        lines = List.copyOf(next);
        return !same;
    }

    private static List<String> keys(List<MatrixLine> all) {
        return all.stream().map(MatrixLine::key).toList();
    }

    private static List<String> groups(List<MatrixLine> all) {
        return all.stream().map(line -> line.head().group()).toList();
    }

    /** Returns the indexes of the lines that the filter leaves. */
    int[] filtered() {
        return IntStream.of(order.ordered(lines)).filter(i -> filter.isBlank() || lines.get(i).matches(filter))
                .toArray();
    }

    /** Shows these lines, pinned ones first; tells whether others were shown, or in another order. */
    boolean show(int[] indexes) {
        int[][] next = folded.fold(order.pinnedFirst(indexes, lines), lines);
        boolean same = Arrays.deepEquals(next, shown);
        shown = next;
        return !same;
    }

    /** Returns how many of the lines that are shown are pinned: they come first. */
    public int pinned() {
        return (int) IntStream.range(0, shown.length).takeWhile(i -> order.isPinned(line(i).key())).count();
    }

    static int[] kept(int[] indexes, IntPredicate kept) {
        return IntStream.of(indexes).filter(kept).toArray();
    }

    static int[] sorted(int[] indexes, Comparator<Integer> order) {
        return IntStream.of(indexes).boxed().sorted(order).mapToInt(Integer::intValue).toArray();
    }
}
