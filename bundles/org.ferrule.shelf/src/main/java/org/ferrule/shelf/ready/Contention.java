/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import java.util.List;

/**
 * An item of which several needs want more than there is.
 *
 * @param item id of the item
 * @param units number of units that the needs which came first have taken
 * @param takers needs that have taken units, in order
 * @param losers needs that could have used them and are worse off
 */
public record Contention(String item, int units, List<Claim> takers, List<Claim> losers) {

    /** Copies the lists. */
    public Contention {
        takers = List.copyOf(takers);
        losers = List.copyOf(losers);
    }

    /**
     * A need of a case.
     *
     * @param plannedCase id of the case
     * @param need id of the need
     */
    public record Claim(String plannedCase, String need) {
    }
}
