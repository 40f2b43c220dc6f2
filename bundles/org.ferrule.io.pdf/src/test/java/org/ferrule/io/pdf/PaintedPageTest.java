/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.picture.contract.PaintedContract;

class PaintedPageTest extends PaintedContract {

    @Override
    protected BufferedImage painted(Picture picture) throws IOException {
        DocumentInfo info = DocumentInfo.of("Painted", OffsetDateTime.parse("2026-03-04T05:06:07Z"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfWriter().write(new Document(info, List.of(picture)), out);
        try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
            return new PDFRenderer(pdf).renderImage(0, (float) (PIXELS_PER_MM * 25.4 / 72));
        }
    }
}
