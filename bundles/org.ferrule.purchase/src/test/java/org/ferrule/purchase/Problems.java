/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.shelf.ready.Need;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/** Makes problems for tests. */
final class Problems {
    static final LocalDate DAY = LocalDate.of(2027, 3, 15);

    private Problems() {
    }

    static Need need(String id, int count, String... items) {
        return new Need(id, count, List.of(items), List.of());
    }

    static Rung rung(String id, String axis, Need... needs) {
        return new Rung(id, axis, List.of(needs));
    }

    static PurchaseCase planned(String id, Rung... rungs) {
        return new PurchaseCase(id, DAY, List.of(rungs));
    }

    static Lot lot(String number, int days, int quantity) {
        return new Lot(number, Optional.of(DAY.plusDays(days)), quantity, "", Optional.empty());
    }

    static Item item(String id, Lot... lots) {
        return new Item(id, Optional.empty(), Optional.empty(), List.of(lots), 0, Optional.empty(), id);
    }

    static Offer offer(String item, String price) {
        return new Offer(item, price.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(price)),
                Optional.empty());
    }

    static PurchaseProblem problem(Goal goal, int rungs, Shelf shelf, List<Offer> offers, PurchaseCase... cases) {
        return new PurchaseProblem(Arrays.asList(cases), shelf, offers, rungs, Map.of(), goal);
    }

    static Shelf shelf(Item... items) {
        return new Shelf(List.of(items));
    }
}
