/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.Objects;

import org.ferrule.fit.engineering.change.Place;
import org.ferrule.quantity.Length;

/**
 * One figure at a limiting place, and what less spread of it would do.
 *
 * @param place where it is printed
 * @param assumed whether its spread comes from the rule set and not from the label: measuring may do
 * @param spread how far its unfavourable end lies from its centre
 * @param alone by how much its unfavourable end must come towards the centre if nothing else changes
 * @param shared by how much when all contributors give in proportion to their spread; rounded up
 */
public record Contributor(Place place, boolean assumed, Length spread, Length alone, Length shared) {

    public Contributor {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(spread, "spread");
        Objects.requireNonNull(alone, "alone");
        Objects.requireNonNull(shared, "shared");
    }

    /** Whether this one alone could do it: its spread is at least as large as what is missing. */
    public boolean isEnoughAlone() {
        return alone.compareTo(spread) <= 0;
    }
}
