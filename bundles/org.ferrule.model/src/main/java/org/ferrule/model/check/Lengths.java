/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.Optional;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;

/** Reads the printed figures of dimensions. What is not stated or cannot be read is told elsewhere. */
final class Lengths {

    private Lengths() {
    }

    /** Returns the printed figure, or nothing if there is none that can be read. */
    static Optional<Length> of(Dimension dimension) {
        return Optional.ofNullable(dimension).filter(Dimension::readable).map(Dimension::label);
    }

    static boolean isMore(Dimension a, Dimension b) {
        return of(a).isPresent() && of(b).isPresent() && of(a).get().compareTo(of(b).get()) > 0;
    }

    static String mm(Length length) {
        return LengthFormat.faithful(LengthUnit.MILLIMETRE).format(length);
    }
}
