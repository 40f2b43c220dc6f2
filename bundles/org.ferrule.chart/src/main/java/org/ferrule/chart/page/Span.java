/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A run of rows or columns.
 *
 * @param from the first, from 0
 * @param to behind the last
 */
record Span(int from, int to) {
    /** A border of groups is taken when at least this share of the room is used. */
    private static final double USED_SHARE = 0.6;

    int size() {
        return to - from;
    }

    /** Cuts heads into runs of at most a number, about equally long, at borders of groups where that is possible. */
    static List<Span> cut(List<Head> heads, int most) {
        List<Span> spans = new ArrayList<>();
        int from = 0;
        while (from < heads.size()) {
            int left = heads.size() - from;
            int runs = (left + most - 1) / most;
            int even = (left + runs - 1) / runs;
            int to = runs == 1 ? heads.size() : border(heads, from, from + even, from + most);
            spans.add(new Span(from, to));
            from = to;
        }
        return List.copyOf(spans);
    }

    /** The border of groups that is nearest to a wish and not too near to the beginning; the wish itself if none is. */
    private static int border(List<Head> heads, int from, int wish, int last) {
        int least = from + (int) Math.ceil((last - from) * USED_SHARE);
        int best = -1;
        for (int i = least; i <= last; i++) {
            if (startsGroup(heads, i) && (best < 0 || Math.abs(i - wish) < Math.abs(best - wish))) {
                best = i;
            }
        }
        return best < 0 ? wish : best;
    }

    /** The last border of groups between a share of the run and its end; the end itself if there is none. */
    static int lastBorder(List<Head> heads, int from, int end) {
        int least = from + (int) Math.ceil((end - from) * USED_SHARE);
        for (int i = end; i >= Math.max(least, from + 1); i--) {
            if (i == heads.size() || startsGroup(heads, i)) {
                return i;
            }
        }
        return end;
    }

    /** Whether a new group begins at a head. */
    static boolean startsGroup(List<Head> heads, int index) {
        return index == 0 || index < heads.size() && !heads.get(index).group().equals(heads.get(index - 1).group());
    }
}
