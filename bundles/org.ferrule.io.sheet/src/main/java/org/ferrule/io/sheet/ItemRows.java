/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.shelf.sheet.SheetFault;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;

/** What the rows of an item say. */
final class ItemRows {
    private final String id;
    private final int firstRow;
    private final Map<Column, String> texts = new EnumMap<>(Column.class);
    private final List<Lot> lots = new ArrayList<>();

    ItemRows(String id, int firstRow) {
        this.id = id;
        this.firstRow = firstRow;
    }

    int firstRow() {
        return firstRow;
    }

    String text(Column column) {
        return texts.getOrDefault(column, "");
    }

    /** Takes a text; false if another one is known. */
    boolean agrees(Column column, String text) {
        return text.isEmpty() || texts.merge(column, text, (known, more) -> known).equals(text);
    }

    void add(Lot lot) {
        lots.add(lot);
    }

    /** Makes the item, or tells what is wrong with it. */
    Optional<Item> make(List<SheetFault> faults) {
        String level = text(Column.PAR_LEVEL);
        String price = text(Column.PRICE);
        if (!level.matches("[0-9]{0,9}")) {
            faults.add(new SheetFault(firstRow, Column.PAR_LEVEL.heading(), level, "a whole number, zero or more"));
        } else if (!price.matches("([0-9]{1,12}(\\.[0-9]{1,6})?)?")) {
            faults.add(new SheetFault(firstRow, Column.PRICE.heading(), price, "a price such as 120.50"));
        } else {
            return made(faults, level.isEmpty() ? 0 : Integer.parseInt(level),
                    price.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(price)));
        }
        return Optional.empty();
    }

    private Optional<Item> made(List<SheetFault> faults, int level, Optional<BigDecimal> price) {
        try {
            return Optional.of(new Item(id, optional(Column.DEVICE), optional(Column.DI), lots, level, price,
                    text(Column.NAME)));
        } catch (IllegalArgumentException e) {
            faults.add(new SheetFault(firstRow, "", e.getMessage(), "lots that do not contradict each other"));
            return Optional.empty();
        }
    }

    private Optional<String> optional(Column column) {
        return Optional.of(text(column)).filter(text -> !text.isEmpty());
    }
}
