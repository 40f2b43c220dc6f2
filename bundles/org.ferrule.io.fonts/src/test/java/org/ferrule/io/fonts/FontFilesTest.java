/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.fonts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;

import org.ferrule.picture.FontFace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FontFilesTest {

    @ParameterizedTest
    @EnumSource
    void fileHoldsTheFaceOfItsName(FontFace face) throws IOException, FontFormatException {
        try (InputStream in = FontFiles.open(face)) {
            assertEquals(FontFiles.name(face), Font.createFont(Font.TRUETYPE_FONT, in).getFontName());
        }
    }

    @Test
    void licenceOfTheFontsStandsBesideThem() {
        assertNotNull(FontFiles.class.getResource("dejavu/LICENSE"));
    }
}
