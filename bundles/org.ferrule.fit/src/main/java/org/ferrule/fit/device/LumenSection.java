/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * A stretch of a lumen.
 *
 * @param name what it is called
 * @param from station of its proximal end, from the lumen's proximal entry
 * @param to station of its distal end, from the lumen's proximal entry
 * @param proximal inner diameter at its proximal end; absent when nobody states it
 * @param distal inner diameter at its distal end; the same as {@code proximal} where there is no taper
 * @param source where its figures were read
 */
public record LumenSection(String name, Length from, Length to, Optional<Dimension> proximal,
        Optional<Dimension> distal, SourceRef source) {

    public LumenSection {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(proximal, "proximal");
        Objects.requireNonNull(distal, "distal");
        Objects.requireNonNull(source, "source");
        if (from.isNegative() || to.compareTo(from) < 0) {
            throw new IllegalArgumentException("lumen section \"" + name + "\" runs from " + from.mm() + " mm to "
                    + to.mm() + " mm: stations must be 0 or more and in order");
        }
    }
}
