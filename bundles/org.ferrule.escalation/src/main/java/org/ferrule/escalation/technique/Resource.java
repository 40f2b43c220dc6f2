/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

/** What a try uses up. */
public enum Resource {
    /** Minutes. */
    TIME("time"),
    /** Contrast medium, in mL. */
    CONTRAST("contrast"),
    /** Air kerma at the reference point, in mGy. */
    DOSE("dose"),
    /** In the currency of the laboratory. */
    MONEY("money");

    private final String word;

    Resource(String word) {
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
    public static Resource ofWord(String word) {
        for (Resource value : values()) {
            if (value.word.equals(word)) {
                return value;
            }
        }
        throw new IllegalArgumentException("no resource is called \"" + word + "\"");
    }
}
