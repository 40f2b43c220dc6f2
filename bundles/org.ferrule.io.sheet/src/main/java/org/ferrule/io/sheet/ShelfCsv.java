/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.ferrule.shelf.sheet.SheetException;
import org.ferrule.shelf.sheet.SheetFault;
import org.ferrule.shelf.sheet.ReadShelf;
import org.ferrule.shelf.stock.Shelf;

/**
 * A shelf as CSV. An apostrophe is put before texts that a spreadsheet would take for a formula, and is left out again
 * when the text is read.
 */
public final class ShelfCsv {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder().setRecordSeparator("\r\n").get();
    private static final String FORMULAS = "=+-@\t\r\n'";

    private ShelfCsv() {
    }

    /**
     * Returns a shelf as CSV.
     *
     * @param shelf any shelf
     */
    public static String write(Shelf shelf) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            printer.printRecord(ShelfWriter.headings());
            for (List<String> row : ShelfWriter.rows(shelf)) {
                printer.printRecord(row.stream().map(ShelfCsv::escaped).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a text in memory cannot fail
        }
        return text.toString();
    }

    /**
     * Reads a shelf. Cells may be parted by commas or, if no comma stands in the first line, by semicolons.
     *
     * @param text the whole file
     * @throws SheetException naming rows and columns that cannot be read
     */
    public static ReadShelf read(String text) throws SheetException {
        String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
        String first = plain.lines().findFirst().orElse("");
        CSVFormat format = first.indexOf(',') < 0 && first.indexOf(';') >= 0
                ? FORMAT.builder().setDelimiter(';').get() : FORMAT;
        List<SheetRow> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(plain), format)) {
            for (CSVRecord line : parser) {
                rows.add(new SheetRow((int) line.getRecordNumber(), line.stream().map(ShelfCsv::plain).toList()));
            }
        } catch (IOException | UncheckedIOException e) {
            throw new SheetException(
                    List.of(new SheetFault(rows.size() + 1, "", String.valueOf(e.getMessage()), "CSV")));
        }
        return ShelfReader.read(rows);
    }

    private static String escaped(String text) {
        return !text.isEmpty() && FORMULAS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String plain(String text) {
        return text.startsWith("'") ? text.substring(1) : text;
    }
}
