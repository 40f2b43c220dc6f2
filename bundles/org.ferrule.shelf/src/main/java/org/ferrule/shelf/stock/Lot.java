/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Units of one item that bear the same production identifiers and lie in the same place.
 *
 * @param lot lot or batch number as printed; empty where the box bears none
 * @param expiry last day on which the units may be used, if one is printed
 * @param quantity number of units, at least 1; exactly 1 where there is a serial number
 * @param location where the units lie, in the user's words; may be empty
 * @param serial serial number, if one is printed
 */
public record Lot(String lot, Optional<LocalDate> expiry, int quantity, String location, Optional<String> serial) {

    /**
     * Checks the quantity.
     *
     * @throws IllegalArgumentException naming the lot, if the quantity is below 1, or above 1 with a serial number
     */
    public Lot {
        if (quantity < 1 || serial.isPresent() && quantity > 1) {
            throw new IllegalArgumentException("no lot of " + quantity + " units: lot \"" + lot + "\""
                    + serial.map(number -> ", serial number \"" + number + "\"").orElse(""));
        }
    }

    /**
     * Returns whether the units may be used on a date: the day of expiry itself still counts, and so does a lot
     * without expiry. That the printed day is the last usable one is common practice; what the label says goes first.
     *
     * @param date the day of the case
     */
    public boolean isUsableOn(LocalDate date) {
        return expiry.map(last -> !last.isBefore(date)).orElse(true);
    }

    /**
     * Returns the same units in another number.
     *
     * @param newQuantity at least 1
     * @throws IllegalArgumentException as the constructor
     */
    public Lot withQuantity(int newQuantity) {
        return new Lot(lot, expiry, newQuantity, location, serial);
    }

    /** Returns whether another lot is of the same units: same lot number, serial number and place. */
    boolean isSameAs(Lot other) {
        return lot.equals(other.lot) && serial.equals(other.serial) && location.equals(other.location);
    }

    /** Returns how the lot is called in messages. */
    String label() {
        return "lot \"" + lot + "\"" + serial.map(number -> ", serial number \"" + number + "\"").orElse("")
                + (location.isEmpty() ? "" : " at \"" + location + "\"");
    }
}
