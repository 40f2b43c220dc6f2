/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

/** How a document of today stands to the one whose fingerprint was kept. */
public enum Standing {
    /** The file has the same bytes. */
    UNCHANGED("unchanged"),
    /** The file has other bytes. */
    CHANGED("changed since"),
    /** There is no such file. */
    NOT_FOUND("not found"),
    /** There is a file, but it could not be read. */
    NOT_READABLE("cannot be read");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    /** The words for it. */
    public String word() {
        return word;
    }
}
