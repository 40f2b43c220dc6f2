/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds what somebody may have meant. */
final class Nearest {

    private Nearest() {
    }

    /** Returns the candidate within a third of its length in edits, letter case not counted; nothing if none is. */
    static Optional<String> of(String typed, Collection<String> candidates) {
        return candidates.stream().filter(candidate -> edits(typed, candidate) <= Math.max(1, candidate.length() / 3))
                .min(Comparator.comparingInt(candidate -> edits(typed, candidate)));
    }

    /** Levenshtein distance: the least number of letters put in, left out or replaced. */
    private static int edits(String first, String second) {
        String a = first.toLowerCase(Locale.ROOT);
        String b = second.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row = next(row, a.charAt(i - 1), b);
        }
        return row[b.length()];
    }

    private static int[] next(int[] above, char letter, String b) {
        int[] row = new int[above.length];
        row[0] = above[0] + 1;
        for (int j = 1; j < row.length; j++) {
            int replaced = above[j - 1] + (letter == b.charAt(j - 1) ? 0 : 1);
            row[j] = Math.min(replaced, Math.min(above[j], row[j - 1]) + 1);
        }
        return row;
    }
}
