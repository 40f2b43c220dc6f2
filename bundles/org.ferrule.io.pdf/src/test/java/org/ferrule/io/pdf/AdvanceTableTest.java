/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.ferrule.picture.FontFace;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the layout knows of the fonts, against the fonts themselves. */
class AdvanceTableTest {

    /** If this fails after a change of the font, put the text that it expects into the table. */
    @ParameterizedTest
    @EnumSource
    void tableSaysWhatTheFontSays(FontFace face) throws IOException {
        try (TrueTypeFont font = Fonts.read(face)) {
            assertEquals(new AdvanceTableText(face, font).lines(), linesOf(face));
        }
    }

    @ParameterizedTest
    @EnumSource
    void measuredWidthIsTheSumOfTheAdvancesInTheFont(FontFace face) throws IOException {
        String text = "Guide extension ⌀ 1.42 mm ±0.03 → “Größe” ≥ 0.056 in — … ✓";
        try (TrueTypeFont font = Fonts.read(face)) {
            CmapLookup characters = font.getUnicodeCmapLookup();
            int sum = 0;
            for (int codePoint : text.codePoints().toArray()) {
                int glyph = characters.getGlyphId(codePoint);
                assertTrue(glyph != 0, Character.getName(codePoint));
                sum += font.getAdvanceWidth(glyph);
            }
            double expectedMm = sum / (double) font.getUnitsPerEm() * 25.4;
            assertEquals(expectedMm, TextMeasure.standard().widthMm(text, TextStyle.ofPt(72).in(face)), 1e-9);
        }
    }

    private static String linesOf(FontFace face) throws IOException {
        try (InputStream in = TextMeasure.class.getResourceAsStream("advances.txt")) {
            String text = new String(in.readAllBytes(), StandardCharsets.US_ASCII);
            return text.lines().filter(line -> line.startsWith(face + " ")).map(line -> line + "\n")
                    .collect(Collectors.joining());
        }
    }
}
