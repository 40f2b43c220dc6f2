/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.Objects;

import org.ferrule.quantity.Length;

/**
 * A device that lies still in the lumen while another one passes.
 *
 * @param device the device, over the wire that it runs over
 * @param tipAhead how far its tip lies beyond the outer device's distal opening; negative when it lies inside
 * @param used whether it has its outline after use (a re-wrapped balloon)
 */
public record Occupant(ReadDevice device, Length tipAhead, boolean used) {

    public Occupant {
        Objects.requireNonNull(device, "device");
        Objects.requireNonNull(tipAhead, "tipAhead");
    }
}
