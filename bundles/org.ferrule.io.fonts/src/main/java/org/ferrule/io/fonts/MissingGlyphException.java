/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.fonts;

import java.util.Locale;
import java.util.Optional;
import org.ferrule.picture.FontFace;

/** A character of a text is not in the font, so the text cannot be written as it is. */
public final class MissingGlyphException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final int codePoint;
    private final String text;

    /**
     * A refusal.
     *
     * @param codePoint the character, as a Unicode code point
     * @param text the whole text that holds it
     * @param face the face that lacks it
     */
    public MissingGlyphException(int codePoint, String text, FontFace face) {
        super(String.format(Locale.ROOT, "The character \"%s\" (U+%04X, %s) in the text \"%s\" is not in the font %s",
                Character.toString(codePoint), codePoint, name(codePoint), text, FontFiles.name(face)));
        this.codePoint = codePoint;
        this.text = text;
    }

    /** The character, as a Unicode code point. */
    public int codePoint() {
        return codePoint;
    }

    /** The whole text that holds the character. */
    public String text() {
        return text;
    }

    private static String name(int codePoint) {
        return Optional.ofNullable(Character.getName(codePoint)).orElse("unassigned");
    }
}
