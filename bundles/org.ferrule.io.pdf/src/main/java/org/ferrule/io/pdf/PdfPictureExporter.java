/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;

import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureExporter;

/** Exports a picture as a PDF document of one page that is as large as the picture. */
public final class PdfPictureExporter implements PictureExporter {

    @Override
    public String extension() {
        return "pdf";
    }

    @Override
    public String label() {
        return "PDF document";
    }

    @Override
    public byte[] export(Picture picture, DocumentInfo info) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new PdfWriter().write(new Document(info, List.of(picture)), bytes);
        return bytes.toByteArray();
    }
}
