/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

/** What a device runs on. */
public enum Carrier {
    /** The wire that lies across the lesion. */
    MAIN_WIRE("main wire"),
    /** The wire beside it. */
    SECOND_WIRE("second wire"),
    /** No wire: it is one itself, or runs without. */
    NONE("none");

    private final String word;

    Carrier(String word) {
        this.word = word;
    }

    /** The word for it, as documents and screens write it. */
    public String word() {
        return word;
    }

    /**
     * The one that a document names.
     *
     * @throws IllegalArgumentException naming the word when there is none
     */
    public static Carrier ofWord(String word) {
        for (Carrier value : values()) {
            if (value.word.equals(word)) {
                return value;
            }
        }
        throw new IllegalArgumentException("no carrier is called \"" + word + "\"");
    }
}
