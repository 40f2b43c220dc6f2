/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.List;
import org.ferrule.quantity.Length;

/**
 * A round shaft or wire.
 *
 * @param diameter zero or more
 */
public record FreeDisc(Length diameter) implements Body {

    /**
     * Checks the diameter.
     *
     * @throws IllegalArgumentException if it is negative
     */
    public FreeDisc {
        if (diameter.isNegative()) {
            throw new IllegalArgumentException("negative diameter: " + diameter);
        }
    }

    @Override
    public Enclosure enclosure() {
        return new Enclosure(diameter, diameter, List.of(new PlacedDisc(0, 0, diameter)));
    }

    @Override
    public Enclosure with(Length disc) {
        return EnclosingCircle.discs(diameter, disc);
    }
}
