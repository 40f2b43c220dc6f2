/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.util.List;
import java.util.Objects;

/**
 * A part of a record in words: rows below headings, or a note instead of them.
 *
 * @param title what it is about
 * @param note a sentence below the title; empty where there is nothing to say
 * @param headings of the columns
 * @param rows each with as many cells as there are headings
 */
public record RecordTable(String title, String note, List<String> headings, List<Row> rows) {

    /**
     * A row.
     *
     * @param notable whether it says something that should be seen: a budget exceeded, a document that has changed
     */
    public record Row(List<String> cells, boolean notable) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    public RecordTable {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(note, "note");
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }
}
