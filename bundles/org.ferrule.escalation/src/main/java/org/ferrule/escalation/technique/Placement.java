/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;

/**
 * What a set-up leaves in the system.
 *
 * @param slot where
 * @param role id of the role whose device comes there
 */
public record Placement(Slot slot, String role) {
    public Placement {
        Objects.requireNonNull(slot, "slot");
        Objects.requireNonNull(role, "role");
    }
}
