/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.ferrule.io.fonts.FontFiles;
import org.ferrule.io.fonts.MissingGlyphException;
import org.ferrule.picture.FontFace;

/** The fonts of one PDF document, each read when it is first asked for and embedded with the characters used. */
final class Fonts implements Closeable {

    private final PDDocument document;
    private final Map<FontFace, Face> faces = new EnumMap<>(FontFace.class);

    /** A face as it was read and as it stands in the document. */
    private record Face(TrueTypeFont source, PDType0Font embedded) {
    }

    Fonts(PDDocument document) {
        this.document = document;
    }

    /** Reads a face. Letters stay letters: the ligatures of the font are not used. */
    static TrueTypeFont read(FontFace face) throws IOException {
        try (InputStream in = FontFiles.open(face)) {
            TrueTypeFont font = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in));
            font.setEnableGsub(false);
            return font;
        }
    }

    /**
     * The font for a text.
     *
     * @throws MissingGlyphException if the face lacks a character of the text
     */
    PDType0Font fontFor(String text, FontFace name) throws IOException {
        Face face = face(name);
        for (int codePoint : text.codePoints().toArray()) {
            if (face.embedded.getCmapLookup().getGlyphId(codePoint) == 0) {
                throw new MissingGlyphException(codePoint, text, name);
            }
        }
        return face.embedded;
    }

    @Override
    public void close() throws IOException {
        for (Face face : faces.values()) {
            face.source.close();
        }
    }

    private Face face(FontFace name) throws IOException {
        Face face = faces.get(name);
        if (face == null) {
            TrueTypeFont source = read(name);
            face = new Face(source, PDType0Font.load(document, source, true));
            faces.put(name, face);
        }
        return face;
    }
}
