/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Makes stock for tests. */
public final class Stock {
    public static final LocalDate CASE = LocalDate.of(2027, 3, 15);

    private Stock() {
    }

    /** A lot; the expiry is empty for none. */
    public static Lot lot(String number, String expiry, int quantity) {
        return new Lot(number, expiry.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(expiry)), quantity, "",
                Optional.empty());
    }

    public static Lot at(String location, Lot lot) {
        return new Lot(lot.lot(), lot.expiry(), lot.quantity(), location, lot.serial());
    }

    public static Lot serial(String serial, Lot lot) {
        return new Lot(lot.lot(), lot.expiry(), 1, lot.location(), Optional.of(serial));
    }

    public static Item item(String id, Lot... lots) {
        return new Item(id, Optional.empty(), Optional.empty(), Arrays.asList(lots), 0, Optional.empty(), id);
    }

    public static Item par(int level, Item item) {
        return new Item(item.id(), item.device(), item.di(), item.lots(), level, item.price(), item.name());
    }

    public static Item di(String di, Item item) {
        return new Item(item.id(), item.device(), Optional.of(di), item.lots(), item.parLevel(), item.price(),
                item.name());
    }

    public static Shelf shelf(Item... items) {
        return new Shelf(List.of(items));
    }

    public static Use use(String item, String lot, int count) {
        return new Use(item, lot, Optional.empty(), Optional.empty(), count);
    }
}
