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
 * @param proof whether it is proved that no better purchase exists
 * @param allocations which units the rungs count on; others may do as well
 */
public record Purchase(List<Order> orders, int units, Optional<BigDecimal> cost, Proof proof,
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
    public enum Proof {
        /**
         * The solver's search ended without a gap, and a second search for anything better ended with nothing. Both
         * compute in floating point numbers; all data are whole numbers that these hold exactly.
         */
        BEST,
        /** The purchase covers all, but there may be a better one. */
        NOT_PROVED
    }
}
