/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.csv;

import java.math.RoundingMode;
import java.util.Optional;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Writes values so that a spreadsheet takes them for what they are. */
final class CellText {
    private static final int DECIMALS = 4;

    private CellText() {
    }

    /**
     * A text that a spreadsheet cannot take for a formula: an apostrophe is put before =, +, -, @, tabs and line breaks
     * at its beginning. Numbers are never passed through here.
     */
    static String text(String text) {
        boolean dangerous = !text.isEmpty() && "=+-@\t\r\n".indexOf(text.charAt(0)) >= 0;
        return dangerous ? "'" + text : text;
    }

    /** A clearance in millimetres with four decimals, rounded down; empty for none. */
    static String clearance(Optional<Length> value) {
        return number(value, DECIMALS, RoundingMode.FLOOR);
    }

    /** A distance in millimetres with one decimal, rounded down; empty for none. */
    static String distance(Optional<Length> value) {
        return number(value, 1, RoundingMode.FLOOR);
    }

    private static String number(Optional<Length> value, int decimals, RoundingMode rounding) {
        return value.map(length -> length.in(LengthUnit.MILLIMETRE, decimals, rounding).toPlainString()).orElse("");
    }
}
