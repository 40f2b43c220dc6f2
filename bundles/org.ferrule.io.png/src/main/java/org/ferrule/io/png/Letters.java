/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.png;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;

import org.ferrule.io.fonts.FontFiles;
import org.ferrule.io.fonts.MissingGlyphException;
import org.ferrule.picture.FontFace;
import org.ferrule.picture.Text;

/** The outlines of lines of text. The fonts of one picture, each read when it is first asked for. */
final class Letters {

    /** Outlines are taken large and made small: in the size of the paper, in millimetres, they would be coarse. */
    private static final float OUTLINE_SIZE = 1000;
    private static final FontRenderContext UNHINTED = new FontRenderContext(null, true, true);

    private final Map<FontFace, Font> fonts = new EnumMap<>(FontFace.class);

    /**
     * The letters of a text as they stand on the paper, in millimetres, side by side without ligatures.
     *
     * @throws MissingGlyphException if the face lacks a character of the text
     */
    Shape of(Text text) throws IOException {
        Font font = font(text.style().face());
        int missing = font.canDisplayUpTo(text.string());
        if (missing >= 0) {
            throw new MissingGlyphException(text.string().codePointAt(missing), text.string(), text.style().face());
        }
        GlyphVector letters = font.createGlyphVector(UNHINTED, text.string());
        double width = letters.getLogicalBounds().getWidth();
        return place(text, width).createTransformedShape(letters.getOutline());
    }

    /** From the font's outlines, where the text begins at the origin, to where it stands. */
    private static AffineTransform place(Text text, double width) {
        double before = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        double scale = text.style().sizeMm() / OUTLINE_SIZE;
        AffineTransform place = AffineTransform.getTranslateInstance(text.at().xMm(), text.at().yMm());
        place.rotate(Math.toRadians(text.rotationDegrees()));
        place.scale(scale, scale);
        place.translate(-before, 0);
        return place;
    }

    private Font font(FontFace face) throws IOException {
        Font font = fonts.get(face);
        if (font == null) {
            font = read(face).deriveFont(OUTLINE_SIZE);
            fonts.put(face, font);
        }
        return font;
    }

    private static Font read(FontFace face) throws IOException {
        try (InputStream in = FontFiles.open(face)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (FontFormatException e) {
            throw new IOException("The font " + FontFiles.name(face) + " cannot be read: " + e.getMessage(), e);
        }
    }
}
