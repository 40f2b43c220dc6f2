/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.words.Phrases;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Taper;
import org.ferrule.picture.Line;
import org.ferrule.picture.PictureBuilder;
import org.junit.jupiter.api.Test;

/** Tapers, ruler and caption of drawings along a device. */
class RulerTest {
    private static List<Line> lines(Drawn drawn, String group) {
        return drawn.marks(group).stream().map(Drawn.Mark::element).filter(Line.class::isInstance)
                .map(Line.class::cast).toList();
    }

    @Test
    void aTaperIsAsThickBetweenItsEndsAsAStraightLineSays() {
        Band band = new Band("taper", 10, 20,
                Optional.of(new Taper(Figure.exactly(mm(1)), Figure.exactly(mm(2)))), false);
        assertEquals(1.25, band.figureAt(12.5).orElseThrow().centre().mm(), 1e-6);
        assertEquals(1, band.figureAt(5).orElseThrow().centre().mm(), 1e-6);
        assertEquals(2, band.figureAt(25).orElseThrow().centre().mm(), 1e-6);
        assertEquals(15, band.middle());
        Band cut = band.cut(12.5, 30);
        assertEquals(12.5, cut.from());
        assertEquals(20, cut.to());
        assertEquals(1.25, cut.diameter().orElseThrow().start().centre().mm(), 1e-6);
        assertEquals(2, cut.diameter().orElseThrow().end().centre().mm(), 1e-6);
        assertTrue(band.overlaps(19, 30) && band.overlaps(0, 11));
        assertFalse(band.overlaps(20, 30) || band.overlaps(0, 10));
    }

    /** One millimetre of paper for one of the device, a number every centimetre. */
    @Test
    void theRulerHasLongTicksAtBordersAndShortOnesAtEvenStations() {
        AxialScale axis = AxialScale.of(List.of(0.0, 100.0), 10, 110);
        PictureBuilder g = new PictureBuilder();
        new Ruler(axis, new Zones(120, 60)).draw(g, List.of(-5.0, 0.0, 33.0, 100.0, 130.0), 0, 100, 40);
        Drawn drawn = Drawn.of(g.picture(120, 60, "ruler"));
        List<Line> ticks = lines(drawn, "").subList(1, lines(drawn, "").size());
        assertEquals(List.of(10.0, 43.0, 110.0), ticks.stream().filter(t -> t.to().yMm() == 41.4)
                .map(t -> t.from().xMm()).toList());
        assertEquals(11, ticks.stream().filter(t -> t.to().yMm() == 40.8).count());
        assertTrue(ticks.stream().allMatch(t -> t.from().yMm() == 40 && t.from().xMm() == t.to().xMm()));
        assertEquals(43, drawn.words("3.3").box().centre().xMm(), 1e-9);
        assertEquals(20, drawn.words("1").box().centre().xMm(), 1e-9);
        assertEquals(110, drawn.words("10").box().centre().xMm(), 1e-9);
        assertFalse(drawn.text().contains("13") || drawn.text().contains("0.5"), "nothing beyond the ends");
        assertEquals(List.of(), drawn.overlaps());
    }

    @Test
    void theCaptionTellsOneScaleFromAnExaggeration() {
        AxialScale axis = AxialScale.of(List.of(0.0, 100.0), 10, 110);
        assertEquals("Diameters and lengths are drawn to one scale", caption(axis, 1.04));
        assertEquals("Diameters are drawn 1.1 times larger than lengths", caption(axis, 1.06));
        assertEquals("Diameters are drawn 25 times larger than lengths", caption(axis, 25.4));
        AxialScale broken = AxialScale.of(List.of(0.0, 4.0, 1420.0), 10, 110);
        assertTrue(caption(broken, 25.4).endsWith("; jagged gaps leave lengths out"), caption(broken, 25.4));
    }

    private static String caption(AxialScale axis, double radial) {
        PictureBuilder g = new PictureBuilder();
        new Caption(Phrases.english(), radial, axis).draw(g, new Zones(200, 60));
        return Drawn.of(g.picture(200, 60, "caption")).text();
    }
}
