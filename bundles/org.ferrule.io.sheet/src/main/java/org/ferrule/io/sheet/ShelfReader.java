/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.shelf.sheet.SheetException;
import org.ferrule.shelf.sheet.SheetFault;
import org.ferrule.shelf.sheet.ReadShelf;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/** Makes a shelf from rows of texts, the first of which holds the headings. */
final class ShelfReader {
    private static final Set<Column> OF_LOT = EnumSet.of(Column.LOT, Column.SERIAL, Column.EXPIRY, Column.LOCATION);

    private final Map<Column, Integer> places = new EnumMap<>(Column.class);
    private final List<String> unknown = new ArrayList<>();
    private final List<SheetFault> faults = new ArrayList<>();
    private final Map<String, ItemRows> items = new LinkedHashMap<>();

    private ShelfReader() {
    }

    static ReadShelf read(List<SheetRow> rows) throws SheetException {
        ShelfReader reader = new ShelfReader();
        List<SheetRow> filled = rows.stream().filter(row -> !row.isBlank()).toList();
        if (filled.isEmpty()) {
            throw new SheetException(List.of(new SheetFault(1, "", "", "headings: " + ShelfWriter.headings())));
        }
        reader.headings(filled.get(0));
        if (reader.faults.isEmpty()) {
            filled.stream().skip(1).forEach(reader::row);
        }
        return new ReadShelf(reader.shelf(),
                reader.places.keySet().stream().map(Column::heading).collect(Collectors.toSet()), reader.unknown);
    }

    private void headings(SheetRow row) {
        for (int i = 0; i < row.cells().size(); i++) {
            Optional<Column> column = Column.of(row.cell(i));
            if (column.isEmpty() && !row.cell(i).isEmpty()) {
                unknown.add(row.cell(i));
            }
            if (column.isPresent() && places.putIfAbsent(column.get(), i) != null) {
                faults.add(new SheetFault(row.number(), row.cell(i), row.cell(i), "this heading once only"));
            }
        }
        if (!places.containsKey(Column.ITEM)) {
            faults.add(new SheetFault(row.number(), "", String.join(", ", row.cells()), "a column \"item\""));
        }
    }

    private void row(SheetRow row) {
        String id = cell(row, Column.ITEM);
        if (id.isEmpty()) {
            fault(row, Column.ITEM, "the id of an item");
            return;
        }
        ItemRows item = items.computeIfAbsent(id, key -> new ItemRows(id, row.number()));
        for (Column column : Column.values()) {
            if (column.isOfItem() && !item.agrees(column, cell(row, column))) {
                fault(row, column, "\"" + item.text(column) + "\" as in row " + item.firstRow());
            }
        }
        int quantity = number(row, Column.QUANTITY);
        if (quantity > 0) {
            lot(row, quantity).ifPresent(item::add);
        } else if (cell(row, Column.QUANTITY).isEmpty() && OF_LOT.stream().anyMatch(c -> !cell(row, c).isEmpty())) {
            fault(row, Column.QUANTITY, "a number of units");
        }
    }

    private Optional<Lot> lot(SheetRow row, int quantity) {
        String expiry = cell(row, Column.EXPIRY);
        try {
            return Optional.of(new Lot(cell(row, Column.LOT),
                    expiry.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(expiry)), quantity,
                    cell(row, Column.LOCATION), Optional.of(cell(row, Column.SERIAL)).filter(s -> !s.isEmpty())));
        } catch (DateTimeException e) {
            fault(row, Column.EXPIRY, "a date such as 2027-03-31");
        } catch (IllegalArgumentException e) {
            fault(row, Column.QUANTITY, "1 with a serial number");
        }
        return Optional.empty();
    }

    /** A whole number, zero or more; nothing is zero. */
    private int number(SheetRow row, Column column) {
        String text = cell(row, column);
        if (text.matches("[0-9]{1,9}")) {
            return Integer.parseInt(text);
        }
        if (!text.isEmpty()) {
            fault(row, column, "a whole number, zero or more");
        }
        return 0;
    }

    private Shelf shelf() throws SheetException {
        List<Item> made = new ArrayList<>();
        items.values().forEach(item -> item.make(faults).ifPresent(made::add));
        if (faults.isEmpty()) {
            try {
                return new Shelf(made);
            } catch (IllegalArgumentException e) {
                faults.add(new SheetFault(1, Column.DI.heading(), e.getMessage(), "each device identifier once"));
            }
        }
        throw new SheetException(faults);
    }

    private String cell(SheetRow row, Column column) {
        Integer place = places.get(column);
        return place == null ? "" : row.cell(place);
    }

    private void fault(SheetRow row, Column column, String expected) {
        faults.add(new SheetFault(row.number(), column.heading(), cell(row, column), expected));
    }
}
