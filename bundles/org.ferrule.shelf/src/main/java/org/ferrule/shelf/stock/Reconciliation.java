/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** What was used is taken off the shelf, what came back is put there. */
final class Reconciliation {

    private Reconciliation() {
    }

    static Shelf of(Shelf shelf, List<Use> uses) throws StockException {
        List<String> contradictions = new ArrayList<>();
        Shelf left = shelf;
        for (Use use : uses) {
            try {
                left = take(left, use);
            } catch (StockException e) {
                contradictions.addAll(e.contradictions());
            }
        }
        if (!contradictions.isEmpty()) {
            throw new StockException(contradictions);
        }
        return left;
    }

    static Shelf take(Shelf shelf, Use use) throws StockException {
        Item item = itemOf(shelf, use.item());
        List<Lot> meant = item.lots().stream().filter(use::means).toList();
        if (meant.size() > 1) {
            throw contradiction(use.label() + " lies in several places: "
                    + String.join(", ", meant.stream().map(lot -> '"' + lot.location() + '"').toList()));
        }
        int there = meant.stream().mapToInt(Lot::quantity).sum();
        if (there < use.count()) {
            throw contradiction(use.label() + ": " + use.count() + " used, but " + there + " there");
        }
        return shelf.with(item.id(), before -> without(before, meant.get(0), use.count()));
    }

    static Shelf put(Shelf shelf, String itemId, Lot lot) throws StockException {
        Item item = itemOf(shelf, itemId);
        try {
            Item after = with(item, lot);
            return shelf.with(itemId, before -> after);
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw contradiction(e.getMessage());
        }
    }

    private static Item itemOf(Shelf shelf, String id) throws StockException {
        return shelf.item(id).orElseThrow(() -> contradiction("no item \"" + id + "\" on the shelf"));
    }

    private static Item without(Item item, Lot lot, int count) {
        List<Lot> lots = new ArrayList<>(item.lots());
        int place = lots.indexOf(lot);
        if (lot.quantity() == count) {
            lots.remove(place);
        } else {
            lots.set(place, lot.withQuantity(lot.quantity() - count));
        }
        return item.withLots(lots);
    }

    private static Item with(Item item, Lot added) {
        List<Lot> lots = new ArrayList<>(item.lots());
        OptionalInt place = item.placesOf(added).findFirst();
        if (place.isEmpty()) {
            lots.add(added);
        } else {
            Lot there = lots.get(place.getAsInt());
            if (!there.expiry().equals(added.expiry())) {
                throw new IllegalArgumentException("item \"" + item.id() + "\", " + added.label()
                        + " is there with another expiry date");
            }
            lots.set(place.getAsInt(), there.withQuantity(Math.addExact(there.quantity(), added.quantity())));
        }
        return item.withLots(lots);
    }

    private static StockException contradiction(String sentence) {
        return new StockException(List.of(sentence));
    }
}
