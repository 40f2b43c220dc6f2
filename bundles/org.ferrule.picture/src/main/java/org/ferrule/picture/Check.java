/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.Locale;

/** Refuses values that cannot be drawn, and names them. */
final class Check {

    private Check() {
    }

    static double finite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be finite, but is " + value);
        }
        return value;
    }

    static double positive(String what, double value) {
        if (!(finite(what, value) > 0)) {
            throw new IllegalArgumentException(what + " must be greater than 0, but is " + value);
        }
        return value;
    }

    static double notNegative(String what, double value) {
        if (finite(what, value) < 0) {
            throw new IllegalArgumentException(what + " must not be negative, but is " + value);
        }
        return value;
    }

    /** Refuses control characters, unpaired surrogates and non-characters: they have no look and no place in XML. */
    static String printable(String what, String text) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int codePoint = text.codePointAt(i);
            if (!isPrintable(codePoint)) {
                throw new IllegalArgumentException(String.format(Locale.ROOT,
                        "%s has a character that cannot be drawn, U+%04X, at position %d", what, codePoint, i));
            }
        }
        return text;
    }

    /** As {@link #printable}, with line breaks allowed. */
    static String printableLines(String what, String text) {
        printable(what, text.replace('\n', ' '));
        return text;
    }

    private static boolean isPrintable(int codePoint) {
        int type = Character.getType(codePoint);
        boolean nonCharacter = (codePoint & 0xFFFE) == 0xFFFE;
        return type != Character.CONTROL && type != Character.SURROGATE && !nonCharacter;
    }
}
