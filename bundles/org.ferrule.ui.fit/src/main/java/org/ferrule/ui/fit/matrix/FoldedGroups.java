/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.ferrule.chart.page.Head;

/** Which groups of lines are folded: one line with sums stands for all of theirs. */
final class FoldedGroups {

    private static final String KEY = "group:";

    private final Set<String> names = new TreeSet<>();

    boolean contains(String group) {
        return !group.isEmpty() && names.contains(group);
    }

    Set<String> names() {
        return names;
    }

    void set(Collection<String> folded) {
        names.clear();
        names.addAll(folded);
    }

    /** Folds a group, or unfolds it. */
    void turn(String group) {
        if (!names.remove(group) && !group.isEmpty()) {
            names.add(group);
        }
    }

    /** Puts the lines of each folded group together, where the first of them stands. */
    int[][] fold(int[] indexes, List<MatrixLine> lines) {
        Map<Object, List<Integer>> places = new LinkedHashMap<>();
        for (int index : indexes) {
            String group = lines.get(index).head().group();
            places.computeIfAbsent(contains(group) ? group : index, key -> new ArrayList<>()).add(index);
        }
        return places.values().stream().map(place -> place.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    /** The line that stands for a group. */
    static MatrixLine line(String group, int count) {
        String size = count + (count == 1 ? " line" : " lines");
        return new MatrixLine(KEY + group, new Head(KEY + group, group, "", "", "", size, group));
    }

    static boolean isGroup(String key) {
        return key.startsWith(KEY);
    }
}
