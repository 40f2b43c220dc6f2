/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.sheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/** Makes rows of texts from a shelf. */
final class ShelfWriter {

    private ShelfWriter() {
    }

    static List<String> headings() {
        return Arrays.stream(Column.values()).map(Column::heading).toList();
    }

    /** Returns the rows without the headings, cells in the order of {@link Column}. */
    static List<List<String>> rows(Shelf shelf) {
        return shelf.items().stream().flatMap(ShelfWriter::rows).toList();
    }

    private static Stream<List<String>> rows(Item item) {
        return item.lots().isEmpty() ? Stream.of(row(item, Optional.empty()))
                : item.lots().stream().map(lot -> row(item, Optional.of(lot)));
    }

    private static List<String> row(Item item, Optional<Lot> lot) {
        List<String> cells = new ArrayList<>();
        for (Column column : Column.values()) {
            cells.add(cell(column, item, lot));
        }
        return cells;
    }

    private static String cell(Column column, Item item, Optional<Lot> lot) {
        return switch (column) {
            case ITEM -> item.id();
            case NAME -> item.name();
            case DEVICE -> item.device().orElse("");
            case DI -> item.di().orElse("");
            case PAR_LEVEL -> Integer.toString(item.parLevel());
            case PRICE -> item.price().map(BigDecimal::toPlainString).orElse("");
            case LOT -> lot.map(Lot::lot).orElse("");
            case SERIAL -> lot.flatMap(Lot::serial).orElse("");
            case EXPIRY -> lot.flatMap(Lot::expiry).map(LocalDate::toString).orElse("");
            case QUANTITY -> Integer.toString(lot.map(Lot::quantity).orElse(0));
            case LOCATION -> lot.map(Lot::location).orElse("");
        };
    }
}
