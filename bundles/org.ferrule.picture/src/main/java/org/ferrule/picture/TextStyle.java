/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * How a text is set.
 *
 * @param face the face
 * @param sizePt the size in typographic points of 1/72 inch, greater than 0
 * @param ink the colour
 */
public record TextStyle(FontFace face, double sizePt, Ink ink) {

    private static final double MM_PER_PT = 25.4 / 72;

    public TextStyle {
        Check.positive("text size", sizePt);
    }

    /** Regular text in the ink of text. */
    public static TextStyle ofPt(double sizePt) {
        return new TextStyle(FontFace.REGULAR, sizePt, Ink.TEXT);
    }

    /** Regular text in the ink of text, its size in millimetres. */
    public static TextStyle ofMm(double sizeMm) {
        return ofPt(sizeMm / MM_PER_PT);
    }

    /** The size in millimetres: the height of the em square, not of a letter. */
    public double sizeMm() {
        return sizePt * MM_PER_PT;
    }

    /** This style in another face. */
    public TextStyle in(FontFace other) {
        return new TextStyle(other, sizePt, ink);
    }

    /** This style in another ink. */
    public TextStyle in(Ink other) {
        return new TextStyle(face, sizePt, other);
    }

    /** This style, bold. */
    public TextStyle bold() {
        return in(face.isCondensed() ? FontFace.CONDENSED_BOLD : FontFace.BOLD);
    }

    /** This style, narrow. */
    public TextStyle condensed() {
        return in(face.isBold() ? FontFace.CONDENSED_BOLD : FontFace.CONDENSED);
    }

    /** This style in another size, in points. */
    public TextStyle sized(double otherPt) {
        return new TextStyle(face, otherPt, ink);
    }
}
