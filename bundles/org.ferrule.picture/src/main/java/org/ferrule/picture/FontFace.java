/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/** The faces in which text is set: one sans-serif family, so that pages look alike everywhere. */
public enum FontFace {
    /** Upright text. */
    REGULAR(false, false),
    /** Headings and what must stand out. */
    BOLD(true, false),
    /** Narrow text, for tables. */
    CONDENSED(false, true),
    /** Narrow headings, for tables. */
    CONDENSED_BOLD(true, true);

    private final boolean bold;
    private final boolean condensed;

    FontFace(boolean bold, boolean condensed) {
        this.bold = bold;
        this.condensed = condensed;
    }

    /** Whether the strokes are heavy. */
    public boolean isBold() {
        return bold;
    }

    /** Whether the letters are narrow. */
    public boolean isCondensed() {
        return condensed;
    }
}
