/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One kind of box on the shelf, and the lots of it that are there.
 *
 * @param id id on its shelf, not empty
 * @param device key of the device in the libraries, such as {@code balloons.devices.json#b-2-0}, if it is known
 * @param di device identifier (the fixed part of the code on the box, such as a GTIN), if it is known
 * @param lots lots in the order in which they were entered; none where the shelf has none
 * @param parLevel number of usable units that should be there, zero or more
 * @param price price of one unit, zero or more, if it is known; the currency is the user's
 * @param name name for people
 */
public record Item(String id, Optional<String> device, Optional<String> di, List<Lot> lots, int parLevel,
        Optional<BigDecimal> price, String name) {

    /** First expired first out: the earliest expiry first, without expiry last, else as entered. */
    private static final Comparator<Lot> FIRST_EXPIRED = Comparator
            .comparing(lot -> lot.expiry().orElse(LocalDate.MAX));

    /**
     * Checks what the item says of itself.
     *
     * @throws IllegalArgumentException naming the item, for an empty id, a negative par level or price, the same lot
     *         entered twice, or one lot number with two expiry dates, of which at least one must be wrong
     */
    public Item {
        lots = List.copyOf(lots);
        if (id.isBlank() || parLevel < 0 || price.filter(value -> value.signum() < 0).isPresent()) {
            throw new IllegalArgumentException("no item \"" + id + "\" with par level " + parLevel
                    + price.map(value -> " and price " + value).orElse(""));
        }
        for (int i = 0; i < lots.size(); i++) {
            checkAgainst(id, lots.get(i), lots.subList(0, i));
        }
    }

    /** Returns the number of units there are, expired ones included. */
    public int quantity() {
        return lots.stream().mapToInt(Lot::quantity).reduce(0, Math::addExact);
    }

    /**
     * Returns the number of units that may be used on a date.
     *
     * @param date the day of the case
     */
    public int usableOn(LocalDate date) {
        return firstExpiredFirst(date).stream().mapToInt(Lot::quantity).reduce(0, Math::addExact);
    }

    /**
     * Returns the lots that may be used on a date, in the order in which they should go: first expired first out.
     *
     * @param date the day of the case
     */
    public List<Lot> firstExpiredFirst(LocalDate date) {
        return lots.stream().filter(lot -> lot.isUsableOn(date)).sorted(FIRST_EXPIRED).toList();
    }

    /**
     * Returns the item with other lots.
     *
     * @param newLots as in the constructor
     * @throws IllegalArgumentException as the constructor
     */
    public Item withLots(List<Lot> newLots) {
        return new Item(id, device, di, newLots, parLevel, price, name);
    }

    /** Returns the place of the same units among the lots. */
    IntStream placesOf(Lot wanted) {
        return IntStream.range(0, lots.size()).filter(i -> lots.get(i).isSameAs(wanted));
    }

    private static void checkAgainst(String id, Lot lot, List<Lot> others) {
        for (Lot other : others) {
            if (other.isSameAs(lot)) {
                throw new IllegalArgumentException("item \"" + id + "\" has twice " + lot.label());
            }
            if (!lot.lot().isEmpty() && lot.lot().equals(other.lot()) && !lot.expiry().equals(other.expiry())) {
                throw new IllegalArgumentException("item \"" + id + "\" has two expiry dates for lot \"" + lot.lot()
                        + "\": " + text(lot) + " and " + text(other));
            }
        }
    }

    private static String text(Lot lot) {
        return lot.expiry().map(LocalDate::toString).orElse("none");
    }
}
