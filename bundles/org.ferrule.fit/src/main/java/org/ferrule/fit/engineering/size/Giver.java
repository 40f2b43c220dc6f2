/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.List;
import java.util.Objects;

import org.ferrule.fit.engineering.change.Place;
import org.ferrule.quantity.Length;

/**
 * Something at a limiting place whose spread eats up clearance.
 *
 * @param place where it is printed
 * @param assumed whether its spread comes from the rule set and not from the label
 * @param spread how far its unfavourable end lies from its centre
 * @param members which of what lies side by side there it is; empty for the lumen
 */
record Giver(Place place, boolean assumed, Length spread, List<Integer> members) {
    Giver {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(spread, "spread");
        members = List.copyOf(members);
    }
}
