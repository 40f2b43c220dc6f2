/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.util.Optional;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Reads stations and lengths along a device: the printed figure counts. */
final class Stations {
    private Stations() {
    }

    /** The station, absent when none is given or it cannot be read. */
    static Optional<Length> of(Dimension printed) {
        return Optional.ofNullable(printed).filter(Dimension::readable).map(Dimension::label);
    }
}
