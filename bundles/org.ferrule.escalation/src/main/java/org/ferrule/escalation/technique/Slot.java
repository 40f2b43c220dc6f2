/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

/** A place in the system where a set-up leaves something. */
public enum Slot {
    /** The guide catheter. */
    GUIDE("guide"),
    /** The guide extension. */
    EXTENSION("extension"),
    /** The wire across the lesion. */
    MAIN_WIRE("main wire"),
    /** A wire beside it. */
    SECOND_WIRE("second wire"),
    /** A balloon that anchors in a side branch, or distally. */
    ANCHOR("anchor"),
    /** A microcatheter over the main wire. */
    MICROCATHETER("microcatheter");

    private final String word;

    Slot(String word) {
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
    public static Slot ofWord(String word) {
        for (Slot value : values()) {
            if (value.word.equals(word)) {
                return value;
            }
        }
        throw new IllegalArgumentException("no slot is called \"" + word + "\"");
    }
}
