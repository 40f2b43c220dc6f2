/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.time.OffsetDateTime;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.picture.contract.PictureWriterContract;

class PdfWriterContractTest extends PictureWriterContract {

    private static final OffsetDateTime CREATED = OffsetDateTime.parse("2026-03-04T05:06:07+01:00");

    @Override
    protected void write(Picture picture, OutputStream out) throws IOException {
        new PdfWriter().write(new Document(DocumentInfo.of(picture.title(), CREATED), List.of(picture)), out);
    }

    @Override
    protected String letters(byte[] written) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(written)) {
            return Letters.inOrderOfPainting(pdf);
        }
    }

    @Override
    protected double[] paperMm(byte[] written) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(written)) {
            PDRectangle paper = pdf.getPage(0).getMediaBox();
            return new double[] { paper.getWidth() * 25.4 / 72, paper.getHeight() * 25.4 / 72 };
        }
    }

    @Override
    protected String title(byte[] written) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(written)) {
            return pdf.getDocumentInformation().getTitle();
        }
    }
}
