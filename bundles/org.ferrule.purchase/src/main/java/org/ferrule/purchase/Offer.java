/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * An item of which any number of units can be bought.
 *
 * @param item id of the item; it need not be on the shelf
 * @param price price of a unit, zero or more, in the user's currency, if it is known
 * @param expiry last day on which bought units may be used; empty if that is after all cases
 */
public record Offer(String item, Optional<BigDecimal> price, Optional<LocalDate> expiry) {

    /**
     * Checks the price.
     *
     * @throws IllegalArgumentException naming the item, if the price is negative
     */
    public Offer {
        if (price.filter(value -> value.signum() < 0).isPresent()) {
            throw new IllegalArgumentException("item \"" + item + "\" for " + price.get());
        }
    }

    /**
     * Returns whether bought units may be used on a day.
     *
     * @param date the day of a case
     */
    public boolean isUsableOn(LocalDate date) {
        return expiry.map(last -> !last.isBefore(date)).orElse(true);
    }
}
