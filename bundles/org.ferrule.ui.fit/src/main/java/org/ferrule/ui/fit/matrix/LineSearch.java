/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds lines by words in their heads, rows first, and goes from one to the next. */
public final class LineSearch {

    private final MatrixContent content;
    private String words = "";
    private List<Hit> hits = List.of();
    private int at = -1;

    /**
     * A line that was found.
     *
     * @param side on which it stands
     * @param key of the line
     */
    public record Hit(Side side, String key) {
    }

    /** Searches what a matrix shows. */
    public LineSearch(MatrixContent content) {
        this.content = content;
    }

    /** Looks for words, and goes to the first line in whose head they all occur, from where it is now. */
    public Optional<Hit> find(String wanted) {
        Optional<Hit> before = current();
        words = wanted;
        look();
        at = hits.isEmpty() ? -1 : Math.max(0, before.map(hits::indexOf).orElse(0));
        return current();
    }

    private void look() {
        List<Hit> found = new ArrayList<>();
        if (!words.isBlank()) {
            for (Side side : Side.values()) {
                MatrixAxis axis = content.axis(side);
                for (int i = 0; i < axis.size(); i++) {
                    if (axis.line(i).matches(words)) {
                        found.add(new Hit(side, axis.line(i).key()));
                    }
                }
            }
        }
        hits = found;
    }

    /** Goes to the next line that was found, or to the one before; after the last comes the first. */
    public Optional<Hit> step(int by) {
        Optional<Hit> before = current();
        look();
        int from = before.map(hits::indexOf).orElse(-1);
        at = hits.isEmpty() ? -1 : Math.floorMod(from + by, hits.size());
        return current();
    }

    /** Returns the line that was gone to last. */
    public Optional<Hit> current() {
        return at < 0 || at >= hits.size() ? Optional.empty() : Optional.of(hits.get(at));
    }

    /** Returns which of how many lines it is, in words; empty while nothing is looked for. */
    public String place() {
        return words.isBlank() ? "" : hits.isEmpty() ? "none" : (at + 1) + " of " + hits.size();
    }
}
