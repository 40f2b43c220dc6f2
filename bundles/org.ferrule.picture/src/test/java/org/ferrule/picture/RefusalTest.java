/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RefusalTest {

    private static final Style STYLE = Style.of(Stroke.of(Ink.TEXT, 0.1));

    @Test
    void namesTheControlCharacterAndItsPlace() {
        refuses("U+000A, at position 2", () -> new PictureBuilder().text(0, 0, "ab\nc"));
    }

    @ParameterizedTest
    @ValueSource(strings = { "\t", "\u0000", "\uD83D", "\uFFFE", "\u0085" })
    void refusesWhatCannotBeDrawnOrWrittenAsXml(String text) {
        refuses("cannot be drawn", () -> new PictureBuilder().text(0, 0, text));
    }

    @Test
    void tooltipMayHaveLinesButNoOtherControls() {
        assertEquals("a\nb", Frame.PLAIN.withTooltip("a\nb").tooltip().orElseThrow());
        refuses("U+0007", () -> Frame.PLAIN.withTooltip("a\u0007b"));
        refuses("Id", () -> Frame.named("a\nb"));
    }

    @Test
    void refusesNumbersThatAreNoPlaces() {
        refuses("NaN", () -> new Point(Double.NaN, 0));
        refuses("Infinity", () -> new Point(0, Double.POSITIVE_INFINITY));
    }

    @Test
    void refusesSizesThatAreNoSizes() {
        refuses("-1.0", () -> new Box(0, 0, -1, 1));
        refuses("width must be greater than 0", () -> new PictureBuilder().picture(0, 10, "none"));
        refuses("text size", () -> TextStyle.ofPt(0));
        refuses("line width", () -> Stroke.of(Ink.TEXT, 0));
        refuses("radius", () -> Ellipse.circle(new Point(0, 0), 0, STYLE));
        refuses("3.0 mm is more than half", () -> new Rect(new Box(0, 0, 10, 5), 3, STYLE));
    }

    @Test
    void refusesOutlinesThatCannotBeDrawn() {
        refuses("MoveTo", () -> new Path(List.of(new Segment.LineTo(new Point(0, 0))), STYLE));
        refuses("At least two", () -> Path.polygon(List.of(new Point(0, 0)), STYLE));
        refuses("sweeps 361.0", () -> Outline.from(0, 0).arc(0, 0, 1, 0, 361));
    }

    @Test
    void refusesStylesThatCannotBeDrawn() {
        refuses("even number", () -> Dash.of(1.0));
        refuses("dash length", () -> Dash.of(1.0, 0.0));
        refuses("solid", () -> new Hatch(Hatch.Pattern.GRID, Ink.TEXT, 1, 1));
        refuses("undone", () -> Transform.scaling(0, 1));
    }

    @Test
    void refusesALimitThatLeavesNoLine() {
        refuses("number of lines", () -> TextLayout.standard().wrap("text", TextStyle.ofPt(9), 10, 0));
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "Text", "a b", "a..b", "a." })
    void refusesRolesThatAreNoNames(String role) {
        refuses("role", () -> Ink.of(role, 0));
    }

    @Test
    void refusesColoursOutOfRange() {
        refuses("red must be 0 to 255, but is -1", () -> new Ink("x", -1, 0, 0));
        refuses("green must be 0 to 255, but is 256", () -> new Ink("x", 0, 256, 0));
        refuses("blue must be 0 to 255, but is 256", () -> new Ink("x", 0, 0, 256));
        refuses("0x1000000", () -> Ink.of("x", 0x1000000));
    }

    @Test
    void refusesADocumentWithoutPagesOrWithoutALanguage() {
        DocumentInfo info = DocumentInfo.of("t", OffsetDateTime.parse("2026-01-02T03:04:05Z"));
        refuses("at least one page", () -> new Document(info, List.of()));
        refuses("language", () -> info.in("english please"));
        refuses("Keyword", () -> info.withKeywords("good", "b\u0007d"));
    }

    private static void refuses(String words, Executable action) {
        String message = assertThrows(IllegalArgumentException.class, action).getMessage();
        assertTrue(message.contains(words), message);
    }
}
