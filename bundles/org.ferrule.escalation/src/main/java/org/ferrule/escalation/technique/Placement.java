/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Length;

/**
 * What a set-up leaves in the system.
 *
 * @param slot where
 * @param role id of the role whose device comes there
 * @param protrusion of an extension: how far it is advanced beyond the guide's tip at most; absent of all else
 */
public record Placement(Slot slot, String role, Optional<Length> protrusion) {
    public Placement {
        Objects.requireNonNull(slot, "slot");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(protrusion, "protrusion");
        if ((slot == Slot.EXTENSION) != protrusion.isPresent()) {
            throw new IllegalArgumentException("how far the device of \"" + role
                    + "\" protrudes must be said of an extension, and of nothing else");
        }
    }
}
