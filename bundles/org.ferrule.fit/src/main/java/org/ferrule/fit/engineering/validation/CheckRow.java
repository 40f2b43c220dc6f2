/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.Map;
import java.util.Objects;

/**
 * One row of a table of check values.
 *
 * @param table name of the table, without an ending
 * @param number of the row, from 1
 * @param fields by column
 */
public record CheckRow(String table, int number, Map<String, String> fields) {

    public CheckRow {
        Objects.requireNonNull(table, "table");
        fields = Map.copyOf(fields);
    }

    /**
     * The text in a column.
     *
     * @throws IllegalArgumentException naming table and column when there is none
     */
    public String get(String column) {
        String text = fields.get(column);
        if (text == null) {
            throw new IllegalArgumentException("the table \"" + table + "\" has no column \"" + column + "\"");
        }
        return text;
    }

    /** The number in a column. */
    double number(String column) {
        return Double.parseDouble(get(column));
    }

    /** What the row is called: its id, or its number where the table has none. */
    String id() {
        return fields.getOrDefault("id", String.valueOf(number));
    }
}
