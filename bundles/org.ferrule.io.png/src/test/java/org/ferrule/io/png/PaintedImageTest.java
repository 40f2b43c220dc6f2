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
import java.util.function.Consumer;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.ferrule.io.fonts.MissingGlyphException;
import org.ferrule.io.pdf.PdfWriter;
import org.ferrule.picture.Box;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.picture.contract.SamplePictures;
import org.junit.jupiter.api.Test;

/** What stands on the paper, at ten pixels to the millimetre. */
class PaintedImageTest {

    private static final int PIXELS_PER_MM = 10;
    private static final PngWriter WRITER = new PngWriter(PIXELS_PER_MM * 25.4);
    private static final DocumentInfo INFO = DocumentInfo.of("Painted", OffsetDateTime.parse("2026-03-04T05:06:07Z"));
    private static final Ink BLUE = Ink.of("sample.blue", 0x0000FF);
    private static final Ink BLACK = Ink.of("sample.black", 0x000000);
    private static final int WHITE = 0xFFFFFF;

    @Test
    void originIsTheUpperLeftCorner() throws IOException {
        BufferedImage page = painted(p -> p.noPen().fill(BLUE).rect(0, 0, 10, 5));
        assertEquals(0x0000FF, at(page, 5, 2.5));
        assertEquals(WHITE, at(page, 5, 6));
        assertEquals(WHITE, at(page, 45, 2.5));
    }

    @Test
    void strokeLiesAstrideTheOutline() throws IOException {
        BufferedImage page = painted(p -> p.pen(BLACK, 2).circle(20, 20, 10));
        assertEquals(0, at(page, 29.5, 20));
        assertEquals(0, at(page, 30.5, 20));
        assertEquals(WHITE, at(page, 31.5, 20));
        assertEquals(WHITE, at(page, 20, 20));
    }

    @Test
    void innerPartOfAPathIsAHole() throws IOException {
        Outline ring = Outline.from(30, 20).arc(20, 20, 10, 0, 360).close()
                .moveTo(25, 20).arc(20, 20, 5, 0, 360).close();
        BufferedImage page = painted(p -> p.noPen().fill(BLUE).path(ring));
        assertEquals(0x0000FF, at(page, 27, 20));
        assertEquals(WHITE, at(page, 20, 20));
    }

    @Test
    void groupIsTurnedClockwiseScaledAndClipped() throws IOException {
        Frame frame = Frame.PLAIN.scaled(2, 2).rotated(90).translated(30, 10).clippedTo(new Box(0, 0, 10, 2));
        BufferedImage page = painted(p -> p.noPen().fill(BLUE).group(frame, g -> g.rect(0, 0, 10, 4)));
        assertEquals(0x0000FF, at(page, 28, 20));
        assertEquals(WHITE, at(page, 24, 20));
        assertEquals(WHITE, at(page, 28, 31));
    }

    @Test
    void hatchStaysInItsAreaAndCoversItsShare() throws IOException {
        Hatch hatch = new Hatch(Hatch.Pattern.RISING, BLACK, 2, 0.5);
        BufferedImage page = painted(p -> p.noPen().fill(Fill.of(hatch)).rect(10, 10, 20, 20));
        assertEquals(0.25 * 400, inkMm2(page, new Box(10, 10, 20, 20)), 8);
        assertEquals(0, inkMm2(page, new Box(10, 31, 20, 5)), 0.1);
    }

    @Test
    void textStandsOnItsBaselineAndKeepsItsAnchor() throws IOException {
        TextStyle style = TextStyle.ofMm(10).in(BLACK);
        double width = TextMeasure.standard().widthMm("HH", style);
        double height = TextMeasure.standard().capHeightMm(style);
        assertInk(new Box(20, 20 - height, width, height), p -> p.lettering(style).text(20, 20, "HH"));
        assertInk(new Box(20 - width / 2, 20 - height, width, height),
                p -> p.lettering(style).textMiddle(20, 20, "HH"));
        assertInk(new Box(30 - width, 20 - height, width, height), p -> p.lettering(style).textEnd(30, 20, "HH"));
    }

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
                () -> painted(p -> p.text(5, 5, "wire 導")));
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

    private static void assertInk(Box expected, Consumer<PictureBuilder> content) throws IOException {
        BufferedImage page = painted(content);
        double all = inkMm2(page, new Box(0, 0, 50, 40));
        assertTrue(all > 5, "hardly any ink: " + all + " mm2");
        assertEquals(all, inkMm2(page, expected.inset(-0.1)), 0.1, "ink outside " + expected);
    }

    /** The blackened area within a box. */
    private static double inkMm2(BufferedImage page, Box box) {
        double pixels = 0;
        for (int x = (int) (box.xMm() * PIXELS_PER_MM); x < box.rightMm() * PIXELS_PER_MM; x++) {
            for (int y = (int) (box.yMm() * PIXELS_PER_MM); y < box.bottomMm() * PIXELS_PER_MM; y++) {
                pixels += 1 - (page.getRGB(x, y) >> 8 & 0xFF) / 255.0;
            }
        }
        return pixels / (PIXELS_PER_MM * PIXELS_PER_MM);
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

    private static int at(BufferedImage page, double xMm, double yMm) {
        return page.getRGB((int) (xMm * PIXELS_PER_MM), (int) (yMm * PIXELS_PER_MM)) & 0xFFFFFF;
    }

    private static BufferedImage painted(Consumer<PictureBuilder> content) throws IOException {
        PictureBuilder builder = new PictureBuilder();
        content.accept(builder);
        return painted(builder.picture(50, 40, "Painted"));
    }

    private static BufferedImage painted(Picture picture) throws IOException {
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
