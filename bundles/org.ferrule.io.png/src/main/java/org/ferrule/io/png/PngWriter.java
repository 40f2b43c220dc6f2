/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.png;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;

/**
 * Writes a picture as a PNG file on white paper, in true colour without transparency. The file states its density, so
 * that it prints in the size of the picture, and the title, author, subject and time. The same picture and information
 * give the same bytes on the same Java.
 */
public final class PngWriter {

    private static final double MM_PER_INCH = 25.4;
    /** An A2 page at 300 dots per inch has 35 million. */
    private static final long MOST_PIXELS = 100_000_000;

    private final double dotsPerInch;

    /**
     * A writer.
     *
     * @param dotsPerInch the density of the pixels, 10 to 2400
     */
    public PngWriter(double dotsPerInch) {
        if (!(dotsPerInch >= 10 && dotsPerInch <= 2400)) {
            throw new IllegalArgumentException("Dots per inch must be 10 to 2400, but are " + dotsPerInch);
        }
        this.dotsPerInch = dotsPerInch;
    }

    /**
     * Writes a picture. The stream is flushed and left open.
     *
     * @throws IllegalArgumentException if the picture has more than 100 million pixels at the density
     * @throws org.ferrule.io.fonts.MissingGlyphException if a text holds a character that the fonts lack
     * @throws IOException if the stream fails
     */
    public void write(Picture picture, DocumentInfo info, OutputStream out) throws IOException {
        BufferedImage image = paint(picture);
        out.write(encode(image, info));
        out.flush();
    }

    /** In memory first: the encoder hides what goes wrong with a stream. */
    private byte[] encode(BufferedImage image, DocumentInfo info) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        try (ImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
            IIOMetadata metadata = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), null);
            new Particulars(info).addTo(metadata, dotsPerInch / MM_PER_INCH);
            writer.setOutput(stream);
            writer.write(new IIOImage(image, null, metadata));
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private BufferedImage paint(Picture picture) throws IOException {
        BufferedImage image = blank(pixels(picture.widthMm()), pixels(picture.heightMm()));
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setColor(Color.WHITE);
            graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.scale(dotsPerInch / MM_PER_INCH, dotsPerInch / MM_PER_INCH);
            new ImagePainter(graphics, new Letters()).paint(picture.elements());
        } finally {
            graphics.dispose();
        }
        return image;
    }

    private long pixels(double mm) {
        return Math.max(1, Math.round(mm * dotsPerInch / MM_PER_INCH));
    }

    private BufferedImage blank(long width, long height) {
        if (Math.max(width, height) > MOST_PIXELS || width * height > MOST_PIXELS) {
            throw new IllegalArgumentException("A picture of " + width + " x " + height + " pixels at " + dotsPerInch
                    + " dots per inch is too large; " + MOST_PIXELS + " pixels are the most");
        }
        return new BufferedImage((int) width, (int) height, BufferedImage.TYPE_INT_RGB);
    }
}
