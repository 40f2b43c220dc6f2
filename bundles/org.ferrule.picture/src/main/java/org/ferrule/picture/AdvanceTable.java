/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/**
 * Measures text by the advance widths of DejaVu Sans 2.37, without kerning or ligatures, as the writers set it. A
 * character without an entry counts as one em, wider than nearly every letter, so that it may leave room but never
 * overlap.
 */
final class AdvanceTable implements TextMeasure {

    private static final String RESOURCE = "advances.txt";

    private final Map<FontFace, Face> faces = new EnumMap<>(FontFace.class);

    /** What is known of one face, in units of its em. */
    private record Face(int unitsPerEm, int ascent, int descent, int capHeight, Map<Integer, Integer> advances) {

        int advance(int codePoint) {
            return advances.getOrDefault(codePoint, unitsPerEm);
        }
    }

    /** Reads the table on first use. */
    private static final class Holder {
        static final AdvanceTable STANDARD = read();
    }

    private AdvanceTable() {
    }

    static AdvanceTable standard() {
        return Holder.STANDARD;
    }

    @Override
    public double widthMm(String text, TextStyle style) {
        Face face = faces.get(style.face());
        long units = text.codePoints().mapToLong(face::advance).sum();
        return units * style.sizeMm() / face.unitsPerEm;
    }

    @Override
    public double ascentMm(TextStyle style) {
        Face face = faces.get(style.face());
        return face.ascent * style.sizeMm() / face.unitsPerEm;
    }

    @Override
    public double descentMm(TextStyle style) {
        Face face = faces.get(style.face());
        return face.descent * style.sizeMm() / face.unitsPerEm;
    }

    @Override
    public double capHeightMm(TextStyle style) {
        Face face = faces.get(style.face());
        return face.capHeight * style.sizeMm() / face.unitsPerEm;
    }

    private static AdvanceTable read() {
        AdvanceTable table = new AdvanceTable();
        try (InputStream in = AdvanceTable.class.getResourceAsStream(RESOURCE);
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII))) {
            lines.lines().filter(line -> !line.startsWith("#")).forEach(table::readLine);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read the table " + RESOURCE, e);
        }
        return table;
    }

    private void readLine(String line) {
        String[] words = line.split(" ");
        FontFace name = FontFace.valueOf(words[0]);
        if (words[1].equals("em")) {
            faces.put(name, new Face(Integer.parseInt(words[2]), Integer.parseInt(words[4]),
                    Integer.parseInt(words[6]), Integer.parseInt(words[8]), new HashMap<>()));
        } else {
            int first = Integer.parseInt(words[1], 16);
            for (int i = 2; i < words.length; i++) {
                faces.get(name).advances.put(first + i - 2, Integer.parseInt(words[i]));
            }
        }
    }
}
