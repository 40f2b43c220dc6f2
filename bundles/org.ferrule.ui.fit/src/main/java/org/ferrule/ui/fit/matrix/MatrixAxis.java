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

/**
 * One side of the matrix as it is looked at. An index says where a line stands in the chart, a position where it is
 * shown.
 */
public final class MatrixAxis {

    private List<MatrixLine> lines = List.of();
    private String filter = "";
    private int[] shown = {};

    /** Returns how many lines are shown. */
    public int size() {
        return shown.length;
    }

    /** Returns how many lines there are. */
    public int total() {
        return lines.size();
    }

    /** Returns where the line that is shown at a position stands in the chart. */
    public int index(int position) {
        return shown[position];
    }

    /** Returns the line that is shown at a position. */
    public MatrixLine line(int position) {
        return lines.get(shown[position]);
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
        return IntStream.range(0, lines.size()).filter(i -> filter.isBlank() || lines.get(i).matches(filter)).toArray();
    }

    /** Shows these lines; tells whether others were shown, or in another order. */
    boolean show(int[] indexes) {
        boolean same = Arrays.equals(indexes, shown);
        shown = indexes;
        return !same;
    }

    static int[] kept(int[] indexes, IntPredicate kept) {
        return IntStream.of(indexes).filter(kept).toArray();
    }

    static int[] sorted(int[] indexes, Comparator<Integer> order) {
        return IntStream.of(indexes).boxed().sorted(order).mapToInt(Integer::intValue).toArray();
    }
}
