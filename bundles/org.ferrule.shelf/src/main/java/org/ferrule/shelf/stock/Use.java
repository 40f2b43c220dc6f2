/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

import java.util.Optional;

/**
 * Units that were used, as a log of a case names them.
 *
 * @param item id of the item
 * @param lot lot number; empty where the box bears none
 * @param serial serial number, if the box bears one
 * @param location where they were taken from; may be left out where the lot lies in one place only
 * @param count number of units, at least 1
 */
public record Use(String item, String lot, Optional<String> serial, Optional<String> location, int count) {

    /**
     * Checks the count.
     *
     * @throws IllegalArgumentException naming item and lot, if the count is below 1
     */
    public Use {
        if (count < 1) {
            throw new IllegalArgumentException("cannot use " + count + ": item \"" + item + "\", lot \"" + lot + "\"");
        }
    }

    /** Returns whether a lot is one that the use may mean. */
    boolean means(Lot candidate) {
        return candidate.lot().equals(lot) && candidate.serial().equals(serial)
                && location.map(candidate.location()::equals).orElse(true);
    }

    /** Returns how the units are called in messages. */
    String label() {
        return "item \"" + item + "\", lot \"" + lot + "\""
                + serial.map(number -> ", serial number \"" + number + "\"").orElse("")
                + location.filter(place -> !place.isEmpty()).map(place -> " at \"" + place + "\"").orElse("");
    }
}
