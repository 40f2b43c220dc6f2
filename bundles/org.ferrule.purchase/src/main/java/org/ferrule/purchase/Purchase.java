/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What to buy. It was checked with whole numbers, apart from the solver, that it covers all that was asked for.
 *
 * @param orders items to buy, in the order of the offers; none if the shelf suffices
 * @param units number of units in all
 * @param cost sum of prices; empty if an ordered item has no price
 * @param confirmation whether searches agree that no better purchase exists
 * @param allocations which units the rungs count on; others may do as well
 */
public record Purchase(List<Order> orders, int units, Optional<BigDecimal> cost, Confirmation confirmation,
        List<Allocation> allocations) implements PurchaseAnswer {

    /** Copies the lists. */
    public Purchase {
        orders = List.copyOf(orders);
        allocations = List.copyOf(allocations);
    }

    /**
     * An item to buy.
     *
     * @param item id of the item
     * @param count number of units, at least 1
     */
    public record Order(String item, int count) {
    }

    /** Whether a purchase is the best. */
    public enum Confirmation {
        /**
         * Two searches by different methods of the library agree that nothing better exists. They compute in floating
         * point numbers, so that this is no mathematical proof.
         */
        CONFIRMED,
        /** The purchase covers all, but there may be a better one. */
        OPEN
    }
}
