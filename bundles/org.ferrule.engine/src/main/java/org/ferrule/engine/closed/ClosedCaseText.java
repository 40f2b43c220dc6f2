/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A record as plain text, one part below the other, columns aligned. */
public final class ClosedCaseText {
    private static final String INDENT = "   ";
    private static final String GAP = "  ";

    private ClosedCaseText() {
    }

    /** The record in lines. */
    public static List<String> lines(ClosedCase closed) {
        ClosedCaseWords words = new ClosedCaseWords(closed);
        List<String> lines = new ArrayList<>(List.of(closed.title(), words.head(), words.documentsInBrief()));
        words.tables().forEach(table -> add(table, lines));
        return lines;
    }

    private static void add(RecordTable table, List<String> lines) {
        lines.add("");
        lines.add(table.title());
        if (!table.note().isEmpty()) {
            lines.add(INDENT + table.note());
        }
        if (!table.rows().isEmpty()) {
            List<List<String>> all = new ArrayList<>(List.of(table.headings()));
            table.rows().forEach(row -> all.add(row.cells()));
            aligned(all).forEach(line -> lines.add(INDENT + line));
        }
    }

    private static List<String> aligned(List<List<String>> rows) {
        List<Integer> widths = IntStream.range(0, rows.get(0).size())
                .mapToObj(column -> rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0)).toList();
        return rows.stream().map(row -> IntStream.range(0, widths.size())
                .mapToObj(column -> row.get(column) + " ".repeat(widths.get(column) - row.get(column).length()))
                .collect(Collectors.joining(GAP)).stripTrailing()).toList();
    }
}
