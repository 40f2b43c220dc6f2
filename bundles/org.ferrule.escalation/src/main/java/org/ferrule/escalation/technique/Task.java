/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

/** What a device has to do in its role. */
public enum Task {
    /** Come through the lumens on its way. */
    PASS("pass"),
    /** Come through them and, inflated, fill the lumen that it lies in. */
    FILL("fill"),
    /** Be in the room: it passes no lumen of the system. */
    STAND_BY("stand by");

    private final String word;

    Task(String word) {
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
    public static Task ofWord(String word) {
        for (Task value : values()) {
            if (value.word.equals(word)) {
                return value;
            }
        }
        throw new IllegalArgumentException("no task is called \"" + word + "\"");
    }
}
