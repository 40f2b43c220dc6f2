/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import org.ferrule.io.fonts.MissingGlyphException;
import org.ferrule.picture.Document;
import org.ferrule.picture.Picture;

/**
 * Writes a document as a PDF file: one page for each picture, of its size, with a bookmark of its title where there are
 * several. The same document always gives the same bytes; its time is the one that the document states. Names and
 * tooltips of groups are for screens and are left out.
 */
public final class PdfWriter {

    private static final double POINTS_PER_MM = 72 / 25.4;

    /**
     * Writes a document. The stream is flushed and left open; nothing is written where a text cannot be.
     *
     * @throws MissingGlyphException if a text holds a character that the fonts lack
     * @throws IOException if the stream fails
     */
    public void write(Document document, OutputStream out) throws IOException {
        try (PDDocument pdf = new PDDocument(); Fonts fonts = new Fonts(pdf)) {
            CRC32 contents = new CRC32();
            for (Picture picture : document.pages()) {
                contents.update(addPage(picture, pdf, fonts));
            }
            new Particulars(document).addTo(pdf);
            // the identity of the file is made from this number and the particulars; without it, from the clock
            pdf.setDocumentId(contents.getValue());
            pdf.save(out);
            out.flush();
        }
    }

    /** Adds a page and returns its painting instructions. */
    private static byte[] addPage(Picture picture, PDDocument pdf, Fonts fonts) throws IOException {
        float widthPt = (float) (picture.widthMm() * POINTS_PER_MM);
        float heightPt = (float) (picture.heightMm() * POINTS_PER_MM);
        PDPage page = new PDPage(new PDRectangle(widthPt, heightPt));
        pdf.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(pdf, page)) {
            content.transform(new Matrix((float) POINTS_PER_MM, 0, 0, (float) -POINTS_PER_MM, 0, heightPt));
            new PdfPainter(content, fonts).paintPage(picture.elements());
        }
        return page.getContents().readAllBytes();
    }
}
