/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureExporter;

/** Exports a picture as SVG; a picture without a title of its own takes that of the information. */
public final class SvgPictureExporter implements PictureExporter {

    @Override
    public String extension() {
        return "svg";
    }

    @Override
    public String label() {
        return "SVG picture";
    }

    @Override
    public byte[] export(Picture picture, DocumentInfo info) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new SvgWriter().write(picture.title().isEmpty() ? picture.titled(info.title()) : picture, bytes);
        return bytes.toByteArray();
    }
}
