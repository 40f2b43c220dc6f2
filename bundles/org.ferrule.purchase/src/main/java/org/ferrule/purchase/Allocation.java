/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.util.Optional;

import org.ferrule.shelf.stock.Lot;

/**
 * Units that a rung counts on.
 *
 * @param plannedCase id of the case
 * @param rung id of the rung
 * @param need id of the need
 * @param item id of the item
 * @param lot the lot on the shelf; empty for units that are bought
 * @param count number of units, at least 1
 */
public record Allocation(String plannedCase, String rung, String need, String item, Optional<Lot> lot, int count) {

    Allocation withCount(int units) {
        return new Allocation(plannedCase, rung, need, item, lot, units);
    }
}
