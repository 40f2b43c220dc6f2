/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture.contract;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.Locale;

import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureExporter;
import org.junit.jupiter.api.Test;

/** What every exporter of pictures must keep to. */
public abstract class PictureExporterContract {

    /** What stands in the file. */
    protected static final DocumentInfo INFO = DocumentInfo
            .of("Two guides – outer ⌀", OffsetDateTime.parse("2026-03-04T05:06:07+01:00")).by("A. Nonymous");

    /** The exporter. */
    protected abstract PictureExporter exporter();

    /** Reads back the title of an exported file. */
    protected abstract String title(byte[] exported) throws Exception;

    @Test
    void extensionIsPlain() {
        assertTrue(exporter().extension().matches("[a-z0-9]+"), exporter().extension());
    }

    @Test
    void hasANameForPeople() {
        assertFalse(exporter().label().isBlank());
    }

    @Test
    void keepsATitle() throws Exception {
        assertEquals(INFO.title(), title(exporter().export(SamplePictures.blank(), INFO)));
    }

    @Test
    void sameInputGivesTheSameBytesUnderEveryLocale() throws IOException {
        Picture picture = SamplePictures.everything();
        byte[] first = exporter().export(picture, INFO);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(first, exporter().export(picture, INFO));
        } finally {
            Locale.setDefault(before);
        }
    }
}
