/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

/** The two sides of the matrix. What holds for rows holds for columns: one class with a side serves for both. */
public enum Side {

    /** Rows: outer devices with their lumens. */
    OUTER("outer device"),
    /** Columns: inner devices. */
    INNER("inner device");

    private final String word;

    Side(String word) {
        this.word = word;
    }

    /** Returns what stands on this side. */
    public String word() {
        return word;
    }

    /** Returns the other side. */
    public Side other() {
        return this == OUTER ? INNER : OUTER;
    }
}
