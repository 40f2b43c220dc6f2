/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * All items of one shelf. Immutable: what takes or puts returns a new shelf.
 *
 * @param items items, each id once; a device identifier stands for one item only
 */
public record Shelf(List<Item> items) {
    private static final int GTIN_DIGITS = 14;

    /**
     * Checks that nothing stands twice.
     *
     * @throws IllegalArgumentException naming the id or device identifier that two items have
     */
    public Shelf {
        items = List.copyOf(items);
        Set<String> ids = new HashSet<>();
        Set<String> dis = new HashSet<>();
        for (Item item : items) {
            if (!ids.add(item.id())) {
                throw new IllegalArgumentException("two items \"" + item.id() + "\"");
            }
            if (item.di().isPresent() && !dis.add(comparable(item.di().get()))) {
                throw new IllegalArgumentException("two items with the device identifier " + item.di().get());
            }
        }
    }

    /**
     * Returns the item with an id.
     *
     * @param id any text
     */
    public Optional<Item> item(String id) {
        return items.stream().filter(item -> item.id().equals(id)).findFirst();
    }

    /**
     * Returns the item with a device identifier. GTINs of 8, 12, 13 and 14 digits are the same with zeros in front.
     *
     * @param di any text
     */
    public Optional<Item> itemOfDi(String di) {
        String wanted = comparable(di);
        return items.stream().filter(item -> item.di().map(Shelf::comparable).filter(wanted::equals).isPresent())
                .findFirst();
    }

    /**
     * Returns the units that should go first on a date: first expired first out. Fewer than asked for where there are
     * fewer, none where the item is not on the shelf.
     *
     * @param itemId id of the item
     * @param date the day of the case
     * @param count number of units, zero or more
     */
    public List<Pick> pick(String itemId, LocalDate date, int count) {
        List<Pick> picks = new ArrayList<>();
        int left = count;
        for (Lot lot : item(itemId).map(item -> item.firstExpiredFirst(date)).orElse(List.of())) {
            int taken = Math.min(left, lot.quantity());
            if (taken > 0) {
                picks.add(new Pick(itemId, lot, taken));
                left -= taken;
            }
        }
        return List.copyOf(picks);
    }

    /**
     * Returns the shelf without some units. A lot of which nothing is left is gone.
     *
     * @param use what is taken; a box with a serial number is meant only where the number is given
     * @throws StockException naming the units, if the shelf has not as many, or the lot lies in several places and none
     *         is named
     */
    public Shelf take(Use use) throws StockException {
        return Reconciliation.take(this, use);
    }

    /**
     * Returns the shelf with more units: those of a lot that is there are added to it.
     *
     * @param itemId id of an item on the shelf
     * @param lot units that are put there
     * @throws StockException naming the item if it is not on the shelf, or the lot if it contradicts what is there
     */
    public Shelf put(String itemId, Lot lot) throws StockException {
        return Reconciliation.put(this, itemId, lot);
    }

    /**
     * Returns the shelf after a case.
     *
     * @param uses all that was used
     * @throws StockException naming every use that the shelf cannot cover, alone or together with those before it;
     *         the shelf itself stays as it is
     */
    public Shelf reconcile(List<Use> uses) throws StockException {
        return Reconciliation.of(this, uses);
    }

    /**
     * Returns the items of which less than the par level may be used on a date, in the order of the shelf.
     *
     * @param date usually today; units that expire before it do not count
     */
    public List<BelowPar> belowPar(LocalDate date) {
        return items.stream().filter(item -> item.usableOn(date) < item.parLevel())
                .map(item -> new BelowPar(item, item.usableOn(date))).toList();
    }

    /** Returns the shelf with one item changed. */
    Shelf with(String itemId, UnaryOperator<Item> change) {
        return new Shelf(items.stream().map(item -> item.id().equals(itemId) ? change.apply(item) : item).toList());
    }

    private static String comparable(String di) {
        boolean digits = !di.isEmpty() && di.length() < GTIN_DIGITS && di.chars().allMatch(c -> c >= '0' && c <= '9');
        return digits ? "0".repeat(GTIN_DIGITS - di.length()) + di : di;
    }
}
