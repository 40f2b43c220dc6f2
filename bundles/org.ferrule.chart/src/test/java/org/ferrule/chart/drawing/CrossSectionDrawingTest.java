/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.Shelf;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.picture.Ellipse;
import org.ferrule.picture.Line;
import org.ferrule.picture.Picture;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CrossSectionDrawingTest {
    private static final CrossSectionDrawing DRAWING = new CrossSectionDrawing(
            ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)));
    private static final double[][] SIZES = { { 79.4, 39.7 }, { 110, 60 }, { 70, 45 }, { 200, 120 } };

    static Stream<FitQuestion> questions() {
        return LongitudinalDrawingTest.questions();
    }

    private static Picture draw(Device outer, Device inner) {
        FitQuestion question = Shelf.question(outer, inner);
        return DRAWING.ofPair(question, Shelf.answer(question).in(), Phase.IN, 110, 60);
    }

    @ParameterizedTest
    @MethodSource("questions")
    void wordsKeepApartAndOnThePaper(FitQuestion question) {
        FitAnswer answer = Shelf.answer(question);
        for (double[] size : SIZES) {
            for (Phase phase : Phase.values()) {
                Picture picture = DRAWING.ofPair(question, answer.in(phase), phase, size[0], size[1]);
                Drawn drawn = Drawn.of(picture);
                assertEquals(List.of(), drawn.overlaps(), picture.title());
                assertEquals(List.of(), drawn.outside(picture.paper()), picture.title());
            }
        }
    }

    private static Ellipse circle(Picture picture, String group) {
        return Drawn.of(picture).groups().stream().filter(g -> g.id().equals(group))
                .flatMap(g -> g.group().elements().stream()).filter(Ellipse.class::isInstance)
                .map(Ellipse.class::cast).reduce((a, b) -> b).orElseThrow();
    }

    /** Nominal: lumen 1.778 mm, shaft 0.86 mm, wire 0.3556 mm; so 0.5624 mm are left. */
    @Test
    void circlesAndTheGapAreToOneScale() {
        Picture picture = draw(Shelf.guide("6 Fr", "0.070 in"), Shelf.balloon("2.5", "0.82 mm"));
        Ellipse lumen = circle(picture, "lumen");
        Ellipse shaft = circle(picture, "shaft");
        Ellipse wire = circle(picture, "wire");
        double scale = lumen.radiusXMm() / (1.778 / 2);
        assertEquals(0.86 / 2 * scale, shaft.radiusXMm(), 1e-6);
        assertEquals(0.3556 / 2 * scale, wire.radiusXMm(), 1e-6);
        double apart = shaft.centre().yMm() - wire.centre().yMm();
        assertEquals(shaft.radiusXMm() + wire.radiusXMm(), apart, 1e-6, "shaft and wire touch");
        double floor = lumen.centre().yMm() + lumen.radiusXMm();
        assertEquals(floor, shaft.centre().yMm() + shaft.radiusXMm(), 1e-6, "the shaft lies on the floor");
        Line gap = gap(picture);
        assertEquals(0.5624 * scale, Math.abs(gap.from().yMm() - gap.to().yMm()), 1e-6);
    }

    private static Line gap(Picture picture) {
        return Drawn.of(picture).groups().stream().filter(g -> g.id().equals("clearance"))
                .flatMap(g -> g.group().elements().stream()).map(Line.class::cast).findFirst().orElseThrow();
    }

    @Test
    void tellsAllThreeClearancesAndSizes() {
        String text = Drawn.of(draw(Shelf.guide("6 Fr", "0.070 in"), Shelf.balloon("2.5", "0.82 mm"))).text();
        for (String words : List.of("clearance 0.50 mm worst", "0.56 mm nominal, 0.61 mm best", "times life size",
                "lumen \u00d8 1.78 mm (1.75\u20131.80)", "wire \u00d8 0.36 mm", "together")) {
            assertTrue(text.contains(words), words + " in " + text);
        }
    }

    @Test
    void anOverlapSticksOutOfTheLumen() {
        Picture picture = draw(Shelf.extension(), Shelf.burr());
        Ellipse lumen = circle(picture, "lumen");
        Ellipse burr = circle(picture, "shaft");
        assertTrue(burr.centre().yMm() - burr.radiusXMm() < lumen.centre().yMm() - lumen.radiusXMm());
        assertTrue(Drawn.of(picture).text().contains("clearance -0.36 mm worst"));
    }

    @Test
    void anUnknownLumenIsAskedAndNoClearanceDrawn() {
        Drawn drawn = Drawn.of(draw(Shelf.guide("8 Fr", ""), Shelf.burr()));
        assertEquals("?", drawn.text("lumen"));
        assertFalse(drawn.hasGroup("clearance"));
        assertTrue(drawn.text().contains("no inner diameter is stated"), drawn.text());
    }
}
