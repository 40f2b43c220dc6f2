/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TextLayoutTest {

    private static final String LETTERS = "   \nabcdefgh";

    /** Every character is 1 mm wide, so that expectations can be counted. */
    private final TextLayout layout = new TextLayout(new TypewriterMeasure());
    private final TextStyle style = TextStyle.ofPt(9);

    @Test
    void breaksAtBlanks() {
        assertEquals(List.of("guide", "and wire"), layout.wrap("guide and wire", style, 8));
    }

    @Test
    void keepsOwnLineBreaksAndEmptyLines() {
        assertEquals(List.of("a", "", "b"), layout.wrap("a\n\nb", style, 8));
    }

    @Test
    void breaksInsideAWordOnlyWhereItAloneIsTooWide() {
        assertEquals(List.of("a", "catheteri", "zation b"), layout.wrap("a catheterization b", style, 9));
    }

    @Test
    void noBreakSpaceHoldsAFigureAndItsUnitTogether() {
        assertEquals(List.of("of", "6\u00A0Fr"), layout.wrap("of 6\u00A0Fr", style, 5));
    }

    @Test
    void emptyTextIsOneEmptyLine() {
        assertEquals(List.of(""), layout.wrap("", style, 5));
    }

    @Test
    void characterWiderThanTheWidthStandsAlone() {
        assertEquals(List.of("a", "b"), layout.wrap("ab", style, 0.5));
    }

    @Test
    void surrogatePairsAreNotTornApart() {
        assertEquals(List.of("\uD83D\uDE00", "\uD83D\uDE00"), layout.wrap("\uD83D\uDE00\uD83D\uDE00", style, 1));
    }

    @Test
    void shortensWithAnEllipsisAndNoBlankBeforeIt() {
        assertEquals("guide\u2026", layout.shorten("guide and wire", style, 7));
    }

    @Test
    void leavesTextThatFitsAsItIs() {
        assertEquals("guide", layout.shorten("guide", style, 5));
    }

    @Test
    void shortensToTheEllipsisAloneWhereNothingFits() {
        assertEquals("\u2026", layout.shorten("guide", style, 0.5));
    }

    @Test
    void shortensTheLastOfALimitedNumberOfLines() {
        assertEquals(List.of("one two", "three f\u2026"), layout.wrap("one two three four five", style, 8, 2));
    }

    @Test
    void asManyLinesAsAllowedStayAsTheyAre() {
        assertEquals(List.of("one two", "three"), layout.wrap("one two three", style, 8, 2));
        assertEquals(List.of("one"), layout.wrap("one", style, 8, 2));
    }

    @Test
    void widestOfNothingIsZero() {
        assertEquals(0, layout.widestMm(List.of(), style));
        assertEquals(5, layout.widestMm(List.of("ab", "guide"), style));
    }

    @Test
    void wrappingLosesNothingButBlanksWhateverTheText() {
        Random random = new Random(20260304);
        for (int run = 0; run < 500; run++) {
            String text = random.ints(60, 0, LETTERS.length()).mapToObj(i -> LETTERS.substring(i, i + 1))
                    .collect(Collectors.joining());
            int width = 1 + random.nextInt(20);
            List<String> lines = layout.wrap(text, style, width);
            assertEquals(text.replaceAll("\\s", ""), String.join("", lines).replace(" ", ""));
            assertTrue(layout.widestMm(lines, style) <= width, lines + " at " + width);
        }
    }

    @Test
    void noWrappedLineIsWiderThanTheWidth() {
        TextLayout standard = TextLayout.standard();
        String text = "A guide extension of 1.42 mm ±0.03 ≥ 0.056 in takes a microcatheter ⌀ 0.87 mm → tip";
        List<String> lines = standard.wrap(text, style, 30);
        assertTrue(standard.widestMm(lines, style) <= 30);
        assertEquals(text, String.join(" ", lines));
    }
}
