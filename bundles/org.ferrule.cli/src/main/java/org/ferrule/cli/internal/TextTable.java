/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.ArrayList;
import java.util.List;

/** Cells of text in columns. */
final class TextTable {
    private static final int GAP = 2;

    private TextTable() {
    }

    /** A line for each row, its cells one below the other; every row has as many. */
    static List<String> aligned(List<List<String>> rows) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                int column = i;
                int width = rows.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
                line.append(row.get(i)).append(" ".repeat(width - row.get(i).length() + GAP));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }
}
