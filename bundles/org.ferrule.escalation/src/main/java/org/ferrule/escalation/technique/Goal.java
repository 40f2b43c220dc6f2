/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

/** How far a device has to come. */
public enum Goal {
    /** To the distal end of the lesion. */
    LESION("lesion"),
    /** Into the side branch. */
    BRANCH("branch"),
    /** To the tip of the guide catheter, or of the extension in it. */
    GUIDE_TIP("guide tip"),
    /** It stays in the guide catheter. */
    IN_GUIDE("in guide");

    private final String word;

    Goal(String word) {
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
    public static Goal ofWord(String word) {
        for (Goal value : values()) {
            if (value.word.equals(word)) {
                return value;
            }
        }
        throw new IllegalArgumentException("no goal is called \"" + word + "\"");
    }
}
