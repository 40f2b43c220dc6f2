/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

/** How much harm a step can do. The order is that of the tiers: a lower one comes first. */
public enum Hazard {
    /** What goes with every such procedure. */
    USUAL("usual"),
    /** More than that. */
    RAISED("raised"),
    /** Harm that may need another treatment at once. */
    HIGH("high");

    private final String word;

    Hazard(String word) {
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
    public static Hazard ofWord(String word) {
        for (Hazard value : values()) {
            if (value.word.equals(word)) {
                return value;
            }
        }
        throw new IllegalArgumentException("no hazard is called \"" + word + "\"");
    }
}
