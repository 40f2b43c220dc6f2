/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.sample;

import java.util.Optional;

import org.ferrule.fit.device.Contour;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Reads the texts that samples are written in. */
public final class Texts {
    private Texts() {
    }

    /** The length that a text such as {@code "2.6 Fr"} states. */
    public static Length length(String text) {
        return text.startsWith("-") ? Dimension.parse(text.substring(1)).label().negated()
                : Dimension.parse(text).label();
    }

    /** A dimension; absent for {@code "?"}; one that cannot be read is kept. */
    public static Optional<Dimension> printed(String text) {
        return text.equals("?") ? Optional.empty() : Optional.of(Dimension.lenient(text));
    }

    /** A text that states the length exactly. */
    public static String text(Length length, LengthUnit unit) {
        return Dimension.of(length, unit).text();
    }

    static Contour round(String diameter) {
        return new Contour.Round(printed(diameter));
    }
}
