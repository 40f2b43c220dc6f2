/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.Optional;

import org.ferrule.model.Device;
import org.ferrule.model.Lumen;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * Where a lumen lies in its device.
 *
 * @param distal the station of its distal opening from the distal tip
 * @param proximal the station of its proximal opening from the distal tip
 */
record LumenPlace(Length distal, Length proximal) {

    /** Returns the place, with the tip and the effective length where nothing else is stated; nothing if not known. */
    static Optional<LumenPlace> of(Device device, Lumen lumen) {
        Dimension end = lumen.getProximalAt() == null ? device.getEffectiveLength() : lumen.getProximalAt();
        Optional<Length> begin = lumen.getDistalAt() == null ? Optional.of(Length.ZERO)
                : Lengths.of(lumen.getDistalAt());
        return begin.flatMap(distal -> Lengths.of(end).map(proximal -> new LumenPlace(distal, proximal)));
    }

    Length length() {
        return proximal.minus(distal);
    }
}
