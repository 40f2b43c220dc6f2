/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

/** A mark beside a verdict. It is drawn in the ink of the verdict that it stands by. */
public enum SideMark {
    /** Two authorities contradict each other. */
    CONFLICT("conflict", Glyph.HEAD_ON),
    /** There is something to watch that does not change the verdict. */
    CAUTION("caution", Glyph.WARNING),
    /** On the way out the answer is worse than on the way in. */
    WORSE_OUT("worse on the way out", Glyph.TURNED_BACK),
    /** What is shown was answered before the last change. */
    STALE("being worked out again", Glyph.CLOCK);

    private final String word;
    private final Glyph glyph;

    SideMark(String word, Glyph glyph) {
        this.word = word;
        this.glyph = glyph;
    }

    /** The words for it. */
    public String word() {
        return word;
    }

    /** Its shape. */
    public Glyph glyph() {
        return glyph;
    }
}
