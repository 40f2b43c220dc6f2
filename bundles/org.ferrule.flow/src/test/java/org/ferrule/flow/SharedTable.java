/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the check values that stand in the repository's folder {@code shared}. */
final class SharedTable {

    private SharedTable() {
    }

    /** Returns the rows below the header of a table. */
    static List<CSVRecord> rows(String name) throws IOException {
        try (Reader reader = Files.newBufferedReader(find(name))) {
            return CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get().parse(reader).getRecords();
        }
    }

    private static Path find(String name) {
        Path here = Path.of("").toAbsolutePath();
        return Stream.iterate(here, folder -> folder != null, Path::getParent)
                .map(folder -> folder.resolve("shared").resolve(name)).filter(Files::isRegularFile).findFirst()
                .orElseThrow(() -> new IllegalStateException("no shared/" + name + " above " + here));
    }
}
