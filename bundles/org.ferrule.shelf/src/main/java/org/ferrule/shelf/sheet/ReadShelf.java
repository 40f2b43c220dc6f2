/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.sheet;

import java.util.List;
import java.util.Set;

import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;

/**
 * A shelf that was read from a sheet.
 *
 * @param shelf the shelf
 * @param columns headings that the sheet has and that mean something; what it does not tell is not known, and not nothing
 * @param unknownColumns headings that mean nothing here; what stands below them was not read
 */
public record ReadShelf(Shelf shelf, Set<String> columns, List<String> unknownColumns) {

    /** Copies the collections. */
    public ReadShelf {
        columns = Set.copyOf(columns);
        unknownColumns = List.copyOf(unknownColumns);
    }

    /** What the sheet tells, with what it has no columns for as it is on a shelf now. */
    public Shelf over(Shelf now) {
        return new Shelf(shelf.items().stream()
                .map(item -> now.item(item.id()).map(known -> over(known, item)).orElse(item)).toList());
    }

    private Item over(Item known, Item told) {
        return new Item(told.id(), has("device") ? told.device() : known.device(), has("di") ? told.di() : known.di(),
                has("quantity") ? told.lots().stream().map(lot -> over(known, lot)).toList() : known.lots(),
                has("par level") ? told.parLevel() : known.parLevel(), has("price") ? told.price() : known.price(),
                has("name") ? told.name() : known.name());
    }

    private Lot over(Item known, Lot told) {
        return known.lots().stream()
                .filter(lot -> lot.lot().equals(told.lot()) && (!has("serial") || lot.serial().equals(told.serial())))
                .findFirst().map(lot -> new Lot(told.lot(), has("expiry") ? told.expiry() : lot.expiry(),
                        told.quantity(), has("location") ? told.location() : lot.location(),
                        has("serial") ? told.serial() : lot.serial()))
                .orElse(told);
    }

    private boolean has(String column) {
        return columns.contains(column);
    }
}
