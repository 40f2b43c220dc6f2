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

import org.ferrule.chart.Drawn;
import org.ferrule.chart.Shelf;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.picture.Box;
import org.ferrule.picture.Path;
import org.ferrule.picture.Point;
import org.ferrule.picture.Segment;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** Drawings along a device: figures on paper are those of the device, in the scale of the drawing. */
class LongitudinalScalesTest {
    private static final LongitudinalDrawing DRAWING = new LongitudinalDrawing(
            ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)));
    private static final List<MarkerBand> MARKERS = List.of(new MarkerBand(mm(5), mm(1)),
            new MarkerBand(mm(18), mm(0)));
    private static final Device BALLOON = Shelf.balloon("2.5", "0.82 mm");

    private static Drawn device(Device device) {
        return Drawn.of(DRAWING.ofDevice(ReadDevice.of(device, Shelf.RULES), Shelf.RULES, MARKERS, 260, 110));
    }

    private static DeviceLayout layout(Device device) {
        return DRAWING.layoutOfDevice(ReadDevice.of(device, Shelf.RULES), Shelf.RULES, MARKERS, 260, 110);
    }

    private static List<Box> boxes(Drawn drawn, String group) {
        return drawn.marks(group).stream().map(Drawn.Mark::box).toList();
    }

    /** A profile of 0.82 mm may be 0.03 mm less or 0.08 mm more by the rules. */
    @Test
    void aSectionHasABandFromItsLeastToItsLargestOutline() {
        List<Box> outlines = boxes(device(BALLOON), "section:balloon");
        DeviceLayout layout = layout(BALLOON);
        assertEquals(layout.heightMm(0.90), outlines.get(0).heightMm(), 1e-6);
        assertEquals(layout.heightMm(0.79), outlines.get(1).heightMm(), 1e-6);
        assertEquals(layout.heightMm(0.82), outlines.get(2).heightMm(), 1e-6);
        for (Box outline : outlines) {
            assertEquals(layout.centreY(), outline.centre().yMm(), 1e-6);
            assertEquals(layout.x(19), outline.xMm(), 1e-6);
            assertEquals(layout.x(4), outline.rightMm(), 1e-6);
        }
    }

    @Test
    void rigidSectionsAreHatchedAndExplained() {
        Drawn drawn = device(Shelf.burr());
        assertTrue(hatched(drawn, "section:burr"));
        assertFalse(hatched(drawn, "section:drive sheath"));
        assertTrue(drawn.text().contains("hatched: rigid"), drawn.text());
        assertFalse(device(Shelf.microcatheter()).text().contains("hatched: rigid"));
    }

    private static boolean hatched(Drawn drawn, String group) {
        return drawn.marks(group).stream().anyMatch(m -> m.element() instanceof Path p
                && p.style().fill().hatch().isPresent());
    }

    @Test
    void tooltipsTellNameStationsAndDiameterWithItsEnds() {
        assertEquals("balloon: 0.4 to 1.9 cm, \u00d8 0.82 mm (0.79\u20130.90)",
                tooltip(device(BALLOON), "section:balloon"));
        assertEquals("window: 2.0 to 16.0 cm, not stated", tooltip(device(Shelf.unlabelled()), "section:window"));
    }

    private static String tooltip(Drawn drawn, String group) {
        return drawn.groups().stream().filter(g -> g.id().equals(group)).findFirst().orElseThrow().group().frame()
                .tooltip().orElseThrow();
    }

    @Test
    void markersLieAtTheirStationsAcrossTheShaft() {
        Drawn drawn = device(BALLOON);
        DeviceLayout layout = layout(BALLOON);
        double scale = Math.abs(layout.x(5) - layout.x(6));
        assertEquals(layout.x(5), boxes(drawn, "marker:0").get(0).centre().xMm(), 1e-6);
        assertEquals(Math.max(0.7, scale), boxes(drawn, "marker:0").get(0).widthMm(), 1e-6);
        assertEquals(layout.x(18), boxes(drawn, "marker:1").get(0).centre().xMm(), 1e-6);
        assertEquals(0.7, boxes(drawn, "marker:1").get(0).widthMm(), 1e-6);
        assertEquals(layout.heightMm(0.82), boxes(drawn, "marker:1").get(0).heightMm(), 1e-6);
        assertEquals(layout.centreY(), boxes(drawn, "marker:1").get(0).centre().yMm(), 1e-6);
    }

    @Test
    void thePortLiesOnTheShaftWhereTheWireLeavesIt() {
        Drawn drawn = device(BALLOON);
        DeviceLayout layout = layout(BALLOON);
        Box port = boxes(drawn, "port").get(0);
        assertEquals(layout.x(250), port.centre().xMm(), 1e-6);
        assertEquals(layout.centreY() - layout.heightMm(0.86) / 2, port.bottomMm(), 1e-6);
        assertEquals(1.6, port.heightMm(), 1e-6);
    }

    @Test
    void theLumenOfAWireIsDrawnInTheShaftAsFarAsItGoes() {
        DeviceLayout layout = layout(BALLOON);
        Box lumen = boxes(device(BALLOON), "lumen:wire").stream().reduce(Box::union).orElseThrow();
        assertEquals(layout.heightMm(0.016 * 25.4), lumen.heightMm(), 1e-6);
        assertEquals(layout.centreY(), lumen.centre().yMm(), 1e-6);
        assertEquals(layout.x(250), lumen.xMm(), 1e-6);
        assertEquals(layout.x(0), lumen.rightMm(), 1e-6);
    }

    /** A wire of 0.014 in: along the lumen, up within 3 mm of paper at the port, then along the upper edge. */
    @Test
    void theWireRunsInTheLumenToThePortAndThenOnTheShaft() {
        Drawn drawn = device(BALLOON);
        DeviceLayout layout = layout(BALLOON);
        List<Path> paths = drawn.marks("wire").stream().map(m -> (Path) m.element()).toList();
        double wire = layout.heightMm(0.014 * 25.4);
        assertEquals(wire, paths.get(0).style().stroke().orElseThrow().widthMm(), 1e-6);
        assertEquals(wire - 0.5, paths.get(1).style().stroke().orElseThrow().widthMm(), 1e-6);
        List<Point> points = paths.get(0).segments().stream().map(LongitudinalScalesTest::end).toList();
        assertEquals(layout.x(0) + 4, points.get(0).xMm(), 1e-6);
        assertEquals(layout.centreY(), points.get(0).yMm(), 1e-6);
        Point port = points.stream().filter(p -> Math.abs(p.xMm() - layout.x(250)) < 1e-6).findFirst().orElseThrow();
        assertEquals(layout.centreY(), port.yMm(), 1e-6);
        Point risen = points.get(points.indexOf(port) + 1);
        assertEquals(layout.x(250) - 3, risen.xMm(), 1e-6);
        assertEquals(layout.centreY() - layout.heightMm(0.86) / 2 - wire / 2, risen.yMm(), 1e-6);
        Point last = points.get(points.size() - 1);
        assertEquals(layout.x(1420), last.xMm(), 1e-6);
        assertEquals(layout.centreY() - layout.heightMm(0.64) / 2 - wire / 2, last.yMm(), 1e-6);
    }

    /** The end of a piece of a path. */
    private static Point end(Segment segment) {
        return segment.points().get(segment.points().size() - 1);
    }

    @Test
    void aPlaceInTheDrawingIsReadBackAsAStation() {
        DeviceLayout layout = layout(BALLOON);
        for (double station : new double[] { -3, 0, 4, 10, 19, 250, 700, 1420, 1425 }) {
            assertEquals(station, layout.stationMm(layout.x(station)), 1e-6);
        }
        assertTrue(layout.x(0) > layout.x(19), "the tip is on the right");
        assertEquals(0.82, layout.diameterMm(layout.heightMm(0.82)), 1e-9);
    }
}
