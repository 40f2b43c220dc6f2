/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.apache.commons.csv.CSVRecord;
import org.ferrule.fit.sample.SharedTable;

/** The tables of the folder {@code shared} as a validation takes them. */
final class CheckTables {
    private CheckTables() {
    }

    /** All that a run needs. */
    static Map<String, List<CheckRow>> shared() {
        Map<String, List<CheckRow>> tables = new HashMap<>();
        Validation.tables().forEach(table -> {
            List<CSVRecord> records = SharedTable.rows(table + ".csv");
            tables.put(table, IntStream.range(0, records.size())
                    .mapToObj(i -> new CheckRow(table, i + 1, records.get(i).toMap())).toList());
        });
        return tables;
    }
}
