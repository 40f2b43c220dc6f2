/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.ArrayList;
import java.util.List;

/** Breaks and shortens text to a width. */
public final class TextLayout {

    private static final String ELLIPSIS = "\u2026";

    private final TextMeasure measure;

    /** A layout that goes by a measure. */
    public TextLayout(TextMeasure measure) {
        this.measure = measure;
    }

    /** A layout that goes by the {@linkplain TextMeasure#standard() standard measure}. */
    public static TextLayout standard() {
        return new TextLayout(TextMeasure.standard());
    }

    /** The measure that this layout goes by. */
    public TextMeasure measure() {
        return measure;
    }

    /**
     * Breaks a text into lines no wider than a width: at line breaks of its own, at blanks, and inside a word only
     * where the word alone is too wide. A no-break space (U+00A0) holds "6 Fr" together. Nothing is lost but blanks:
     * at the breaks, at the ends, and all but one between words. A character wider than the width stands alone.
     *
     * @return at least one line; an empty text is one empty line
     */
    public List<String> wrap(String text, TextStyle style, double widthMm) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            wrapParagraph(paragraph, style, widthMm, lines);
        }
        return lines;
    }

    /** The text, or as much of its beginning as fits with an ellipsis; the ellipsis alone where nothing fits. */
    public String shorten(String text, TextStyle style, double widthMm) {
        if (fits(text, style, widthMm)) {
            return text;
        }
        int end = text.length();
        while (end > 0 && !fits(text.substring(0, end).stripTrailing() + ELLIPSIS, style, widthMm)) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).stripTrailing() + ELLIPSIS;
    }

    /**
     * As {@link #wrap(String, TextStyle, double)}, with a largest number of lines, 1 or more; the last one is
     * {@linkplain #shorten shortened} if need be.
     */
    public List<String> wrap(String text, TextStyle style, double widthMm, int largestCount) {
        Check.positive("number of lines", largestCount);
        List<String> lines = wrap(text, style, widthMm);
        if (lines.size() <= largestCount) {
            return lines;
        }
        String rest = String.join(" ", lines.subList(largestCount - 1, lines.size()));
        List<String> kept = new ArrayList<>(lines.subList(0, largestCount - 1));
        kept.add(shorten(rest, style, widthMm));
        return kept;
    }

    /** The width of the widest of several texts, in millimetres; 0 for none. */
    public double widestMm(List<String> texts, TextStyle style) {
        return texts.stream().mapToDouble(text -> measure.widthMm(text, style)).max().orElse(0);
    }

    private void wrapParagraph(String paragraph, TextStyle style, double widthMm, List<String> lines) {
        String line = "";
        for (String word : paragraph.strip().split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (fits(longer, style, widthMm)) {
                line = longer;
            } else {
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = breakWord(word, style, widthMm, lines);
            }
        }
        lines.add(line);
    }

    /** Adds all full lines of a word that is too wide and returns what is left of it. */
    private String breakWord(String word, TextStyle style, double widthMm, List<String> lines) {
        String rest = word;
        while (!fits(rest, style, widthMm)) {
            int end = longestStart(rest, style, widthMm);
            if (end == rest.length()) {
                break;
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }

    /** The length of the longest beginning that fits, one character at least. */
    private int longestStart(String word, TextStyle style, double widthMm) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            if (!fits(word.substring(0, next), style, widthMm)) {
                break;
            }
            end = next;
        }
        return end;
    }

    private boolean fits(String text, TextStyle style, double widthMm) {
        return measure.widthMm(text, style) <= widthMm;
    }
}
