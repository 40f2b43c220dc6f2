/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

class CaptionTest {

    private static final Picture PICTURE = new PictureBuilder().pen(Ink.TEXT, 0.3).line(0, 0, 100, 40)
            .picture(100, 40, "A line");

    @Test
    void withoutWordsThePictureIsTheSame() {
        assertSame(PICTURE, Caption.NONE.below(PICTURE));
    }

    @Test
    void wordsStandBelowThePictureAndWithinThePaper() {
        Picture captioned = Caption.of("What it shows", "Source: a sheet", "2026-03-04").below(PICTURE);
        List<Text> words = texts(captioned);
        assertEquals(List.of("What it shows", "Source: a sheet", "2026-03-04"),
                words.stream().map(Text::string).toList());
        assertTrue(words.stream().allMatch(text -> text.at().yMm() > 40 && text.at().yMm() < captioned.heightMm()));
        assertEquals(PICTURE.elements(), captioned.elements().subList(0, 1));
        assertEquals(100, captioned.widthMm());
    }

    @Test
    void longWordsAreBrokenToTheWidth() {
        Picture captioned = Caption.of("", "many words ".repeat(40)).below(PICTURE);
        TextMeasure measure = TextMeasure.standard();
        List<Text> lines = texts(captioned);
        assertTrue(lines.size() > 3, lines.toString());
        assertTrue(
                lines.stream().allMatch(line -> line.at().xMm() + measure.widthMm(line.string(), line.style()) < 100));
    }

    /** The first line has its baseline one ascent below the margin of 3 mm, the next ones follow at the leading. */
    @Test
    void linesStandBelowEachOtherFromTheMarginOn() {
        TextMeasure measure = TextMeasure.standard();
        Picture captioned = Caption.NONE.with("a note\nof two lines").with("another").below(PICTURE);
        List<Text> words = texts(captioned);
        TextStyle style = words.get(0).style();
        double leading = measure.leadingMm(style);
        for (int i = 0; i < 3; i++) {
            assertEquals(new Point(3, 43 + measure.ascentMm(style) + i * leading).distanceMm(words.get(i).at()), 0,
                    1e-9);
        }
        assertEquals(43 + 3 * leading + 3, captioned.heightMm(), 1e-9);
    }

    @Test
    void narrowPictureGetsWiderPaper() {
        Picture narrow = new PictureBuilder().picture(20, 20, "");
        assertEquals(80, Caption.of("What it shows").below(narrow).widthMm());
    }

    @Test
    void refusesWhatCannotBeDrawn() {
        assertThrows(IllegalArgumentException.class, () -> Caption.of("a\u0007bell"));
        assertThrows(IllegalArgumentException.class, () -> Caption.of("title", "a\u0007bell"));
    }

    private static List<Text> texts(Picture picture) {
        return picture.elements().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
    }
}
