/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.ferrule.picture.PictureExporter;
import org.ferrule.picture.contract.PictureExporterContract;
import org.ferrule.picture.contract.SamplePictures;
import org.junit.jupiter.api.Test;

class PdfPictureExporterTest extends PictureExporterContract {

    @Override
    protected PictureExporter exporter() {
        return new PdfPictureExporter();
    }

    @Override
    protected String title(byte[] exported) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(exported)) {
            return pdf.getDocumentInformation().getTitle();
        }
    }

    @Test
    void pageIsAsLargeAsThePicture() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(exporter().export(SamplePictures.everything(), INFO))) {
            assertEquals(1, pdf.getNumberOfPages());
            assertEquals(120, pdf.getPage(0).getMediaBox().getWidth() * 25.4 / 72, 0.001);
            assertEquals(160, pdf.getPage(0).getMediaBox().getHeight() * 25.4 / 72, 0.001);
        }
    }
}
