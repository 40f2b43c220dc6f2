/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

/** Texts of the digits 0 to 9; no other script's digits count. */
final class Digits {

    private Digits() {
    }

    static boolean is(char c) {
        return c >= '0' && c <= '9';
    }

    static boolean areAll(String text) {
        return !text.isEmpty() && text.chars().allMatch(c -> is((char) c));
    }

    /** Fails at the first character that is no digit. */
    static void check(CodeText text, int from, int to) throws CodeException {
        for (int i = from; i < to; i++) {
            if (!is(text.at(i))) {
                throw text.fault(CodeFault.CHARACTER, i, "a digit");
            }
        }
    }
}
