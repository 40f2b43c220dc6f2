/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.png;

import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureExporter;

/** Exports a picture as PNG, at a density that prints well. */
public final class PngPictureExporter implements PictureExporter {

    /** What printers of text ask for (common practice). */
    private static final double PRINT_DOTS_PER_INCH = 300;

    @Override
    public String extension() {
        return "png";
    }

    @Override
    public String label() {
        return "PNG picture, 300 dots per inch";
    }

    @Override
    public byte[] export(Picture picture, DocumentInfo info) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new PngWriter(PRINT_DOTS_PER_INCH).write(picture, info, bytes);
        return bytes.toByteArray();
    }
}
