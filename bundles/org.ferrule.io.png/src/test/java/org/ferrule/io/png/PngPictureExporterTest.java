/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.png;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;

import org.ferrule.picture.PictureExporter;
import org.ferrule.picture.contract.PictureExporterContract;
import org.ferrule.picture.contract.SamplePictures;
import org.junit.jupiter.api.Test;

class PngPictureExporterTest extends PictureExporterContract {

    @Override
    protected PictureExporter exporter() {
        return new PngPictureExporter();
    }

    @Override
    protected String title(byte[] exported) throws IOException {
        return DecodedPng.of(exported).text("Title");
    }

    @Test
    void hasThreeHundredDotsToTheInch() throws IOException {
        byte[] file = exporter().export(SamplePictures.everything(), INFO);
        DecodedPng png = DecodedPng.of(file);
        assertEquals(Math.round(120 / 25.4 * 300), png.image().getWidth());
        assertEquals(Math.round(160 / 25.4 * 300), png.image().getHeight());
        assertEquals(Math.round(300 / 0.0254), DecodedPng.pixelsPerMetre(file));
    }

    @Test
    void statesAuthorAndTime() throws IOException {
        DecodedPng png = DecodedPng.of(exporter().export(SamplePictures.blank(), INFO));
        assertEquals("A. Nonymous", png.text("Author"));
        assertEquals("2026-03-04T05:06:07+01:00", png.text("Creation Time"));
    }
}
