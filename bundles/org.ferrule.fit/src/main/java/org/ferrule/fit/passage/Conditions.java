/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What else holds while a device passes.
 *
 * @param inside the devices that already lie in the lumen and stay there
 * @param through the guide extension that the device passes on its way
 * @param bends on the way, in any order
 * @param afterInflation whether the device goes in with its outline after use, because it was inflated before
 */
public record Conditions(List<Occupant> inside, Optional<Through> through, List<Bend> bends, boolean afterInflation) {

    /** The device passes alone, straight and unused. */
    public static final Conditions NONE = new Conditions(List.of(), Optional.empty(), List.of(), false);

    public Conditions {
        inside = List.copyOf(inside);
        Objects.requireNonNull(through, "through");
        bends = List.copyOf(bends);
    }

    /** Whether nothing else lies in the lumen that the device passes. */
    public boolean alone() {
        return inside.isEmpty() && through.isEmpty();
    }
}
