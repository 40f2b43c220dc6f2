/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

import java.util.Optional;

/**
 * Units of one lot that are meant to be taken.
 *
 * @param item id of the item
 * @param lot the lot as it lies on the shelf
 * @param count number of units, at least 1 and no more than the lot has
 */
public record Pick(String item, Lot lot, int count) {

    /**
     * Checks the count.
     *
     * @throws IllegalArgumentException naming item and lot, if the lot has not as many
     */
    public Pick {
        if (count < 1 || count > lot.quantity()) {
            throw new IllegalArgumentException(
                    "cannot take " + count + " of " + lot.quantity() + ": item \"" + item + "\", " + lot.label());
        }
    }

    /** Returns the pick as the use that it will be. */
    public Use asUse() {
        return new Use(item, lot.lot(), lot.serial(), Optional.of(lot.location()), count);
    }
}
