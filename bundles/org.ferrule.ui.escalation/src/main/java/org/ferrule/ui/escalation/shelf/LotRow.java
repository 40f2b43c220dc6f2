/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.shelf;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;

/**
 * A row of the table: a lot of an item, or an item of which there is none.
 *
 * @param item the item
 * @param lot the lot, or null
 */
public record LotRow(StockItem item, StockLot lot) {

    /** Returns the rows of a shelf, in its order. */
    static List<LotRow> all(ShelfDocument shelf) {
        List<LotRow> rows = new ArrayList<>();
        for (StockItem item : shelf.getItems()) {
            item.getLots().forEach(lot -> rows.add(new LotRow(item, lot)));
            if (item.getLots().isEmpty()) {
                rows.add(new LotRow(item, null));
            }
        }
        return rows;
    }

    /** Returns until when the units may be used; nothing if that is not stated, or cannot be read. */
    static Optional<LocalDate> expiry(StockLot lot) {
        try {
            return Optional.ofNullable(lot.getExpiry()).map(LocalDate::parse);
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private static boolean usable(StockLot lot, LocalDate day) {
        boolean unreadable = lot.getExpiry() != null && expiry(lot).isEmpty();
        return !unreadable && expiry(lot).map(last -> !last.isBefore(day)).orElse(true);
    }

    /** Returns how the lot and its item stand on a day. */
    public List<ShelfState> states(LocalDate day) {
        int left = item.getLots().stream().filter(each -> usable(each, day)).mapToInt(StockLot::getQuantity).sum();
        List<ShelfState> states = new ArrayList<>();
        if (lot != null && lot.getExpiry() != null && expiry(lot).isEmpty()) {
            states.add(ShelfState.NO_DATE);
        } else if (lot != null && !usable(lot, day)) {
            states.add(ShelfState.EXPIRED);
        }
        if (left == 0) {
            states.add(ShelfState.NONE_LEFT);
        } else if (left == 1) {
            states.add(ShelfState.LAST_ONE);
        }
        if (left < item.getParLevel()) {
            states.add(ShelfState.BELOW_PAR);
        }
        return states.isEmpty() ? List.of(ShelfState.FINE) : states;
    }

    /** Tells whether every word of a filter stands in one of the texts of the row. */
    boolean matches(String filter, LocalDate day) {
        String all = String.join("\n", Stream.concat(Stream.of(ShelfColumn.values()).map(column -> column.text(this)),
                states(day).stream().map(ShelfState::word)).toList()).toLowerCase(Locale.ROOT);
        return Stream.of(filter.toLowerCase(Locale.ROOT).strip().split("\\s+")).allMatch(all::contains);
    }
}
