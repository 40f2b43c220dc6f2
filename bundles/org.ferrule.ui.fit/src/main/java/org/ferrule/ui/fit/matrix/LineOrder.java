/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** An order of lines of the user's own, where the chart has no place for one, and the lines that stay at the edge. */
final class LineOrder {

    private final Set<String> pinned = new LinkedHashSet<>();
    private List<String> own = List.of();

    /** The keys in the user's own order; empty where the order is that of the chart. */
    List<String> own() {
        return own;
    }

    void own(List<String> keys) {
        own = List.copyOf(keys);
    }

    /** The indexes of all lines in their order; lines that the order does not know come last. */
    int[] ordered(List<MatrixLine> lines) {
        if (own.isEmpty()) {
            return IntStream.range(0, lines.size()).toArray();
        }
        Map<String, Integer> places = new HashMap<>();
        own.forEach(key -> places.put(key, places.size()));
        return MatrixAxis.sorted(IntStream.range(0, lines.size()).toArray(), Comparator
                .comparingInt(i -> places.getOrDefault(lines.get(i).key(), Integer.MAX_VALUE)));
    }

    boolean isPinned(String key) {
        return pinned.contains(key);
    }

    Set<String> pinned() {
        return pinned;
    }

    void pin(Collection<String> keys) {
        pinned.clear();
        pinned.addAll(keys);
    }

    /** Pins a line, or lets it go. */
    void turnPin(String key) {
        if (!pinned.remove(key)) {
            pinned.add(key);
        }
    }

    int[] pinnedFirst(int[] indexes, List<MatrixLine> lines) {
        if (pinned.isEmpty()) {
            return indexes;
        }
        return MatrixAxis.sorted(indexes,
                Comparator.comparingInt(i -> isPinned(lines.get(i).key()) ? 0 : 1));
    }
}
