/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

import org.ferrule.model.ModelFactory;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;
import org.ferrule.shelf.stock.Lot;

/** Takes the lots that a sheet tells of an item over; a lot that is there already stays the same object. */
final class LotTaking {
    private final StockItem item;
    private final List<StockLot> left;

    LotTaking(StockItem item) {
        this.item = item;
        this.left = new ArrayList<>(item.getLots());
    }

    void take(List<Lot> lots) {
        List<Lot> unknown = new ArrayList<>();
        for (Lot lot : lots) {
            take(lot, known -> isOf(known, lot) && lot.location().equals(text(known.getLocation())), unknown);
        }
        List<Lot> fresh = new ArrayList<>();
        unknown.forEach(lot -> take(lot, known -> isOf(known, lot), fresh));
        item.getLots().removeAll(left);
        fresh.forEach(lot -> {
            StockLot added = ModelFactory.eINSTANCE.createStockLot();
            item.getLots().add(added);
            set(added, lot);
        });
    }

    private void take(Lot lot, Predicate<StockLot> same, List<Lot> others) {
        Optional<StockLot> known = left.stream().filter(same).findFirst();
        known.ifPresentOrElse(found -> {
            left.remove(found);
            set(found, lot);
        }, () -> others.add(lot));
    }

    private static boolean isOf(StockLot known, Lot lot) {
        return lot.lot().equals(text(known.getLot())) && Objects.equals(lot.serial().orElse(null), known.getSerial());
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }

    private static String unset(String value) {
        return value.isEmpty() ? null : value;
    }

    private static void set(StockLot known, Lot lot) {
        if (!lot.lot().equals(text(known.getLot()))) {
            known.setLot(unset(lot.lot()));
        }
        lot.serial().filter(serial -> !serial.equals(known.getSerial())).ifPresent(known::setSerial);
        String expiry = lot.expiry().map(LocalDate::toString).orElse(null);
        if (!Objects.equals(expiry, known.getExpiry())) {
            known.setExpiry(expiry);
        }
        if (known.getQuantity() != lot.quantity()) {
            known.setQuantity(lot.quantity());
        }
        if (!lot.location().equals(text(known.getLocation()))) {
            known.setLocation(unset(lot.location()));
        }
    }
}
