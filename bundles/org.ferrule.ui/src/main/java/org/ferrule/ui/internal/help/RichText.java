/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.help;

import java.util.List;

/**
 * A page as paragraphs.
 *
 * @param paragraphs what stands one below the other
 */
record RichText(List<Paragraph> paragraphs) {

    /** What a paragraph is. */
    enum Kind {
        TITLE, HEADING, TEXT, BULLET, NUMBERED, PICTURE
    }

    /**
     * A paragraph.
     *
     * @param kind what it is
     * @param number its place in a numbered list, from 1; else 0
     * @param runs its texts; of a picture, the text that stands for it, with its id as target
     */
    record Paragraph(Kind kind, int number, List<Run> runs) {
    }

    /** How a text is set. */
    enum Style {
        PLAIN, STRONG, EMPHASIS, CODE, LINK
    }

    /**
     * A text in one style.
     *
     * @param text the text
     * @param style its style
     * @param target where a link leads; else empty
     */
    record Run(String text, Style style, String target) {
    }
}
