/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.ferrule.fit.engineering.validation.CheckRow;
import org.ferrule.fit.engineering.validation.Validation;

/** The published check values that ship with the program, each with its source. */
public final class PublishedValues {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

    private PublishedValues() {
    }

    /** The rows of every table that {@link Validation} needs, by the table's name. */
    public static Map<String, List<CheckRow>> tables() {
        Map<String, List<CheckRow>> tables = new LinkedHashMap<>();
        Validation.tables().forEach(table -> tables.put(table, rows(table)));
        return tables;
    }

    private static List<CheckRow> rows(String table) {
        String name = "published/" + table + ".csv";
        try (InputStream in = PublishedValues.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program was built without " + name);
            }
            List<CheckRow> rows = new ArrayList<>();
            for (CSVRecord row : FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                rows.add(new CheckRow(table, rows.size() + 1, row.toMap()));
            }
            return List.copyOf(rows);
        } catch (IOException e) {
            throw new UncheckedIOException("the check values " + name + " cannot be read", e);
        }
    }
}
