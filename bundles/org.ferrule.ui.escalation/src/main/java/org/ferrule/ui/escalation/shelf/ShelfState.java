/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.shelf;

/** How something on a shelf stands: by a shape and a word. */
public enum ShelfState {

    /** There is enough of it. */
    FINE("\u25cf", "in stock"),
    /** May not be used any more. */
    EXPIRED("\u2715", "expired"),
    /** Its expiry cannot be read, so that it does not count. */
    NO_DATE("\u2715", "date unreadable"),
    /** Nothing is left that may be used. */
    NONE_LEFT("\u25cb", "none left"),
    /** One is left. */
    LAST_ONE("\u25d4", "last one"),
    /** Fewer are left than should be. */
    BELOW_PAR("\u25bc", "below par");

    private final String shape;
    private final String word;

    ShelfState(String shape, String word) {
        this.shape = shape;
        this.word = word;
    }

    /** Returns its word. */
    public String word() {
        return word;
    }

    /** Returns its shape and its word. */
    String words() {
        return shape + " " + word;
    }
}
