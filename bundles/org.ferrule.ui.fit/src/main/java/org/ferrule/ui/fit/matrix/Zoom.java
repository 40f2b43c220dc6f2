/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

/** How large cells are. */
public enum Zoom {

    /** Shape and number, under turned heads: much at a glance. */
    SMALL("Small", false),
    /** Shape, word and number. */
    NORMAL("Normal", true),
    /** Shape, word and number, to be read from farther away. */
    LARGE("Large", true);

    private final String word;
    private final boolean words;

    Zoom(String word, boolean words) {
        this.word = word;
        this.words = words;
    }

    /** Returns what it is called. */
    public String word() {
        return word;
    }

    /** Tells whether cells say their verdict in a word. */
    boolean saysWords() {
        return words;
    }
}
