/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.png;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.OffsetDateTime;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.ferrule.io.fonts.MissingGlyphException;
import org.ferrule.io.pdf.PdfWriter;
import org.ferrule.picture.Box;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.contract.PaintedContract;
import org.ferrule.picture.contract.SamplePictures;
import org.junit.jupiter.api.Test;

class PaintedImageTest extends PaintedContract {

    private static final PngWriter WRITER = new PngWriter(PIXELS_PER_MM * 25.4);
    private static final DocumentInfo INFO = DocumentInfo.of("Painted", OffsetDateTime.parse("2026-03-04T05:06:07Z"));

    /** The same picture through another format and another library's painter: as much ink on each square millimetre. */
    @Test
    void looksAsThePdfOfTheSamePicture() throws IOException {
        Picture everything = SamplePictures.everything();
        BufferedImage png = painted(everything);
        BufferedImage pdf = paintedByPdf(everything);
        assertEquals(pdf.getWidth(), png.getWidth(), 1);
        assertEquals(pdf.getHeight(), png.getHeight(), 1);
        double ink = inkMm2(png, everything.paper());
        double apart = apartMm2(png, pdf, everything.paper());
        assertTrue(ink > 500, "hardly any ink: " + ink + " mm2");
        assertTrue(apart < ink / 12, apart + " mm2 of " + ink + " mm2 differ");
    }

    @Test
    void refusesACharacterThatTheFontLacks() {
        MissingGlyphException thrown = assertThrows(MissingGlyphException.class,
                () -> painted(new PictureBuilder().text(5, 5, "wire 導").picture(50, 40, "Painted")));
        assertEquals(0x5C0E, thrown.codePoint());
    }

    @Test
    void refusesWhatWouldNotFitIntoMemory() {
        Picture huge = new PictureBuilder().picture(2000, 2000, "Huge");
        IllegalArgumentException thrown = assertThrows(IllegalArgumentException.class, () -> painted(huge));
        assertTrue(thrown.getMessage().contains("20000 x 20000"), thrown.getMessage());
    }

    @Test
    void passesOnWhatGoesWrongWithTheStream() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int value) throws IOException {
                throw new IOException("no room left");
            }
        };
        IOException thrown = assertThrows(IOException.class, () -> WRITER.write(SamplePictures.blank(), INFO, full));
        assertEquals("no room left", thrown.getMessage());
    }

    /** Summed over squares of a millimetre: edges are softened in different ways. */
    private static double apartMm2(BufferedImage a, BufferedImage b, Box paper) {
        double apart = 0;
        for (int x = 0; x + 1 < paper.widthMm(); x++) {
            for (int y = 0; y + 1 < paper.heightMm(); y++) {
                Box square = new Box(x, y, 1, 1);
                apart += Math.abs(inkMm2(a, square) - inkMm2(b, square));
            }
        }
        return apart;
    }

    @Override
    protected BufferedImage painted(Picture picture) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        WRITER.write(picture, INFO, out);
        return DecodedPng.of(out.toByteArray()).image();
    }

    private static BufferedImage paintedByPdf(Picture picture) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfWriter().write(new Document(INFO, List.of(picture)), out);
        try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
            return new PDFRenderer(pdf).renderImage(0, (float) (PIXELS_PER_MM * 25.4 / 72));
        }
    }
}
