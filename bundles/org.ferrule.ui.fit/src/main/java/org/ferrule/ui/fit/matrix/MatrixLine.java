/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Locale;

import org.ferrule.chart.page.Head;

/**
 * A row or a column of the matrix.
 *
 * @param key by which it is known again after its figures were edited
 * @param head what stands before it
 */
public record MatrixLine(String key, Head head) {

    /** Tells whether all words of a filter occur in what stands before the line. */
    boolean matches(String filter) {
        String text = (head.title() + " " + head.kind() + " " + head.size() + " " + head.lumen() + " " + head.figure()
                + " " + head.group()).toLowerCase(Locale.ROOT);
        for (String word : filter.toLowerCase(Locale.ROOT).trim().split("\\s+")) {
            if (!text.contains(word)) {
                return false;
            }
        }
        return true;
    }

    /** Returns lumen and figure, as far as there are any. */
    String detail() {
        boolean both = !head.lumen().isEmpty() && !head.figure().isEmpty();
        return head.lumen() + (both ? ", " : "") + head.figure();
    }
}
