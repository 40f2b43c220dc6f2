/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.stock;

/**
 * An item of which too little is there.
 *
 * @param item the item
 * @param usable number of units that may be used on the date asked for, below the item's par level
 */
public record BelowPar(Item item, int usable) {

    /** Returns how many units are missing to the par level. */
    public int missing() {
        return item.parLevel() - usable;
    }
}
