/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/**
 * The vessel in which the outermost device lies.
 *
 * @param vessel its name
 * @param diameter its inner diameter as measured; absent when nobody measured it
 */
public record Access(String vessel, Optional<Dimension> diameter) {

    public Access {
        Objects.requireNonNull(vessel, "vessel");
        Objects.requireNonNull(diameter, "diameter");
    }

    /** The smallest diameter that the measurement leaves open; no tolerance is added to it. */
    Optional<Length> low() {
        return readable().flatMap(d -> d.low().or(d::centre).or(d::high));
    }

    /** The largest diameter that the measurement leaves open. */
    Optional<Length> high() {
        return readable().flatMap(d -> d.high().or(d::centre).or(d::low));
    }

    private Optional<Dimension> readable() {
        return diameter.filter(Dimension::readable);
    }
}
