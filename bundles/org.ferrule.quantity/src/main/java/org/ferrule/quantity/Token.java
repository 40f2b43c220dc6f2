/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

/**
 * A piece of a quantity's text.
 *
 * @param kind what it is
 * @param text the characters as typed
 * @param start the 0-based index of its first character
 */
record Token(Kind kind, String text, int start) {

    /** The kinds of token. */
    enum Kind {
        /** Digits with at most one decimal point. */
        NUMBER,
        /** Letters, or an inch mark. */
        WORD,
        PLUS_MINUS,
        PLUS,
        MINUS,
        /** Two points. */
        RANGE,
        SLASH,
        OPEN,
        CLOSE,
        /** A character that no quantity contains. */
        OTHER,
        END
    }

    int end() {
        return start + text.length();
    }

    boolean is(Kind other) {
        return kind == other;
    }

    boolean isWord(String word) {
        return is(Kind.WORD) && text.equalsIgnoreCase(word);
    }
}
