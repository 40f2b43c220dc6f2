/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

/** Check characters of HIBC: the sum of the characters' places in the alphabet, modulo 43 (ANSI/HIBC 2.6, appendix B). */
final class Mod43 {
    static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-. $/+%";

    private Mod43() {
    }

    /** Returns the check character that belongs behind characters of the alphabet. */
    static char checkCharacter(String text) {
        return ALPHABET.charAt(text.chars().map(ALPHABET::indexOf).sum() % ALPHABET.length());
    }

    static boolean endsWithCheck(String text) {
        return text.charAt(text.length() - 1) == checkCharacter(text.substring(0, text.length() - 1));
    }
}
