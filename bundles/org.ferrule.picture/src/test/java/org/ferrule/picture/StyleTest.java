/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Inks, strokes, fills, lettering, and what is known of a document. */
class StyleTest {

    @Test
    void inkIsWrittenAsItsThreeChannels() {
        Ink ink = Ink.of("verdict.fits", 0x1A2BFF);
        assertEquals(new Ink("verdict.fits", 0x1A, 0x2B, 0xFF), ink);
        assertEquals("#1a2bff", ink.hex());
        assertEquals("#000000", new Ink("x", 0, 0, 0).hex());
        assertEquals("#ffffff", new Ink("x", 255, 255, 255).hex());
    }

    @Test
    void fillIsAnInkAHatchOrBoth() {
        Hatch hatch = Hatch.of(Hatch.Pattern.GRID, Ink.TEXT);
        assertEquals(new Fill(Optional.of(Ink.BAND), Optional.empty()), Fill.of(Ink.BAND));
        assertEquals(new Fill(Optional.empty(), Optional.of(hatch)), Fill.of(hatch));
        assertEquals(new Fill(Optional.of(Ink.BAND), Optional.of(hatch)), Fill.of(Ink.BAND, hatch));
        assertTrue(Fill.NONE.isNone());
        assertFalse(Fill.of(Ink.BAND).isNone() || Fill.of(hatch).isNone());
    }

    @ParameterizedTest
    @CsvSource({ "HORIZONTAL, 0", "VERTICAL, 90", "RISING, -45", "FALLING, 45", "LATTICE, 45", "GRID, 0", "DOTS, 0" })
    void hatchIsTurnedFromLevelLines(Hatch.Pattern pattern, double degrees) {
        assertEquals(degrees, pattern.angleDegrees());
    }

    @Test
    void curveHasRoomForItsControlPoints() {
        Path curve = Outline.from(1, 1).curveTo(2, -3, 4, 9, 5, 2).path(new Style(Optional.empty(), Fill.NONE));
        assertEquals(Box.between(new Point(1, -3), new Point(5, 9)), curve.bounds());
    }

    @Test
    void strokeIsSolidAndFlatUnlessItIsSaidOtherwise() {
        Stroke stroke = Stroke.of(Ink.TEXT, 0.5);
        assertTrue(stroke.dash().isSolid());
        assertFalse(stroke.dashed(Dash.of(1.0, 2.0)).dash().isSolid());
        assertEquals(new Stroke(Ink.TEXT, 0.5, Dash.of(1.0, 2.0), Stroke.Ends.ROUND),
                stroke.rounded().dashed(Dash.of(1.0, 2.0)));
    }

    @ParameterizedTest
    @CsvSource({ "REGULAR, BOLD, CONDENSED", "BOLD, BOLD, CONDENSED_BOLD", "CONDENSED, CONDENSED_BOLD, CONDENSED",
        "CONDENSED_BOLD, CONDENSED_BOLD, CONDENSED_BOLD" })
    void boldAndNarrowAddUp(FontFace face, FontFace bold, FontFace narrow) {
        TextStyle style = TextStyle.ofPt(8).in(face).in(Ink.MUTED);
        assertEquals(new TextStyle(bold, 8, Ink.MUTED), style.bold());
        assertEquals(new TextStyle(narrow, 8, Ink.MUTED), style.condensed());
    }

    @Test
    void documentIsDescribedPieceByPiece() {
        OffsetDateTime time = OffsetDateTime.parse("2026-01-02T03:04:05Z");
        assertEquals(new DocumentInfo("title", "author", "subject", List.of("one", "two"), "en-GB", time),
                DocumentInfo.of("title", time).by("author").about("subject").withKeywords("one", "two").in("en-GB"));
    }

    @Test
    void pictureCanBeNamedAnew() {
        Picture picture = new PictureBuilder().line(0, 0, 1, 1).picture(10, 20, "old");
        assertEquals(new Picture(10, 20, "new", "what it shows", picture.elements()),
                picture.titled("new").described("what it shows"));
        assertEquals(new Box(0, 0, 10, 20), picture.paper());
    }
}
