/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

/** What a technique does about a device that does not pass. */
public enum Axis {
    /** Find out where and why it stops. */
    DIAGNOSE("look first"),
    /** Change the plaque. */
    MODIFY("modify the lesion"),
    /** Let the push arrive. */
    SUPPORT("add support"),
    /** Take something thinner. */
    PROFILE("lower the profile"),
    /** Go round it, or stop. */
    LEAVE("leave the plaque");

    private final String word;

    Axis(String word) {
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
    public static Axis ofWord(String word) {
        for (Axis value : values()) {
            if (value.word.equals(word)) {
                return value;
            }
        }
        throw new IllegalArgumentException("no axis is called \"" + word + "\"");
    }
}
