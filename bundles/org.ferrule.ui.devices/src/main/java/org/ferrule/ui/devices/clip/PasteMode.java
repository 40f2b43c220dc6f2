/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.clip;

/** Where pasted rows go. */
public enum PasteMode {

    /** Over the cells from the selected one on. */
    OVER("Over the cells from the selected one on"),
    /** To the rows with the same id; what has another id becomes a new entry. */
    BY_ID("To the rows with the same id; other ids become new entries"),
    /** All as new entries. */
    NEW("All as new entries");

    private final String words;

    PasteMode(String words) {
        this.words = words;
    }

    /** Returns what it does, in words. */
    public String words() {
        return words;
    }

    /** Tells whether the pasted rows need an id. */
    boolean needsIds() {
        return this != OVER;
    }
}
