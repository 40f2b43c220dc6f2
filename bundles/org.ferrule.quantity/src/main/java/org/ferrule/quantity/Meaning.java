/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.Locale;
import java.util.Optional;

/** What a printed dimension says about the part it describes. */
public enum Meaning {
    /** A plain figure without a word: taken as the centre. */
    STATED,
    /** Marked {@code nom}: the centre. */
    NOMINAL,
    /** Marked {@code min}: the lower end. */
    MINIMUM,
    /** Marked {@code max}: the upper end. */
    MAXIMUM,
    /** Marked {@code measured}: one measurement, taken as the centre. */
    MEASURED,
    /** Two figures, {@code 0.88..0.94 mm}: both ends of one part, never a list of sizes. */
    RANGE,
    /** A mean with a standard deviation. */
    SAMPLE;

    /** Finds the meaning that a word gives to a figure, in any case of letters. */
    static Optional<Meaning> ofWord(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "min", "minimum" -> Optional.of(MINIMUM);
            case "max", "maximum" -> Optional.of(MAXIMUM);
            case "nom", "nominal" -> Optional.of(NOMINAL);
            case "measured" -> Optional.of(MEASURED);
            default -> Optional.empty();
        };
    }
}
