/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.HorizontalHeaderTable;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.ferrule.picture.FontFace;

/** Writes what the picture module knows of a face from the face itself. */
final class AdvanceTableText {

    private static final int PER_LINE = 16;

    /** First and last character of the scripts and signs that the table covers, where the face has them. */
    private static final List<int[]> RANGES = List.of(
            new int[] { 0x0020, 0x007E }, new int[] { 0x00A0, 0x024F }, new int[] { 0x0370, 0x03FF },
            new int[] { 0x0400, 0x052F }, new int[] { 0x1E00, 0x1EFF }, new int[] { 0x2000, 0x214F },
            new int[] { 0x2150, 0x23FF }, new int[] { 0x2460, 0x24FF }, new int[] { 0x25A0, 0x27BF });

    private final FontFace face;
    private final TrueTypeFont font;
    private final CmapLookup characters;

    AdvanceTableText(FontFace face, TrueTypeFont font) throws IOException {
        this.face = face;
        this.font = font;
        this.characters = font.getUnicodeCmapLookup();
    }

    /** The lines of one face, each with its newline. */
    String lines() throws IOException {
        HorizontalHeaderTable heights = font.getHorizontalHeader();
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT,
                "%s em %d ascent %d descent %d cap %d\n", face,
                font.getUnitsPerEm(), heights.getAscender(), -heights.getDescender(), capHeight()));
        for (int[] range : RANGES) {
            for (int first = range[0]; first <= range[1]; first += PER_LINE - first % PER_LINE) {
                appendRuns(first, Math.min(range[1], first - first % PER_LINE + PER_LINE - 1), text);
            }
        }
        return text.toString();
    }

    private void appendRuns(int first, int last, StringBuilder text) throws IOException {
        int start = first;
        while (start <= last) {
            int end = start;
            StringJoiner run = new StringJoiner(" ", String.format(Locale.ROOT, "%s %04X ", face, start), "\n");
            while (end <= last && characters.getGlyphId(end) != 0) {
                run.add(Integer.toString(font.getAdvanceWidth(characters.getGlyphId(end))));
                end++;
            }
            if (end > start) {
                text.append(run);
            }
            start = end + 1;
        }
    }

    /** The height of the letter H, as the fonts leave the field for it empty. */
    private int capHeight() throws IOException {
        return font.getGlyph().getGlyph(characters.getGlyphId('H')).getYMaximum();
    }
}
