/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.ferrule.shelf.sheet.SheetException;
import org.ferrule.shelf.sheet.SheetFault;
import org.ferrule.shelf.sheet.ReadShelf;
import org.ferrule.shelf.stock.Shelf;

/** A shelf as XLSX: its first sheet. Numbers and dates are such, everything else is text. */
public final class ShelfXlsx {
    private static final String NAME = "shelf";

    private ShelfXlsx() {
    }

    /**
     * Writes a shelf.
     *
     * @param shelf any shelf
     * @param out where to; stays open
     * @throws IOException if that fails
     */
    public static void write(Shelf shelf, OutputStream out) throws IOException {
        try (Workbook workbook = new Workbook(out, "Ferrule", null)) {
            Worksheet sheet = workbook.newWorksheet(NAME);
            for (Column column : Column.values()) {
                sheet.value(0, column.ordinal(), column.heading());
                sheet.style(0, column.ordinal()).bold().set();
            }
            List<List<String>> rows = ShelfWriter.rows(shelf);
            for (int i = 0; i < rows.size(); i++) {
                write(sheet, i + 1, rows.get(i));
            }
        }
    }

    private static void write(Worksheet sheet, int row, List<String> cells) {
        for (Column column : Column.values()) {
            String text = cells.get(column.ordinal());
            if (!text.isEmpty() && column.isNumber()) {
                sheet.value(row, column.ordinal(), new BigDecimal(text));
            } else if (!text.isEmpty() && column == Column.EXPIRY) {
                sheet.value(row, column.ordinal(), LocalDate.parse(text));
                sheet.style(row, column.ordinal()).format("yyyy-mm-dd").set();
            } else if (!text.isEmpty()) {
                sheet.value(row, column.ordinal(), text);
            }
        }
    }

    /**
     * Reads the first sheet as a shelf. A number in a column of texts is read by its digits, so that an identifier
     * whose zeros a spreadsheet has eaten is still the same GTIN.
     *
     * @param in the whole file; stays open
     * @throws IOException if the bytes cannot be read
     * @throws SheetException if they are no XLSX, naming rows and columns that cannot be read
     */
    public static ReadShelf read(InputStream in) throws IOException, SheetException {
        byte[] bytes = in.readAllBytes();
        List<SheetRow> rows = new ArrayList<>();
        try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(bytes))) {
            List<String> headings = new ArrayList<>();
            for (Row row : workbook.getFirstSheet().read()) {
                rows.add(row(row, headings));
                if (headings.isEmpty() && !rows.get(rows.size() - 1).isBlank()) {
                    headings.addAll(rows.get(rows.size() - 1).cells());
                }
            }
        } catch (IOException | ExcelReaderException e) {
            throw new SheetException(
                    List.of(new SheetFault(rows.size() + 1, "", String.valueOf(e.getMessage()), "an XLSX file")));
        }
        return ShelfReader.read(rows);
    }

    private static SheetRow row(Row row, List<String> headings) throws SheetException {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.getCellCount(); i++) {
            Cell cell = row.getCell(i);
            String heading = i < headings.size() ? headings.get(i) : "";
            cells.add(cell == null ? "" : text(cell, row.getRowNum(), heading));
        }
        return new SheetRow(row.getRowNum(), cells);
    }

    private static String text(Cell cell, int row, String heading) throws SheetException {
        boolean known = Column.of(heading).isPresent();
        if (known && (cell.getType() == CellType.FORMULA || cell.getType() == CellType.ERROR
                || cell.getType() == CellType.BOOLEAN)) {
            throw new SheetException(List.of(new SheetFault(row, heading, String.valueOf(cell.getRawValue()),
                    "a text, a number or a date, not a " + cell.getType().name().toLowerCase(Locale.ROOT))));
        }
        if (cell.getType() == CellType.NUMBER) {
            return Column.of(heading).filter(column -> column == Column.EXPIRY).isPresent()
                    ? cell.asDate().toLocalDate().toString() : cell.asNumber().toPlainString();
        }
        return cell.getText();
    }
}
