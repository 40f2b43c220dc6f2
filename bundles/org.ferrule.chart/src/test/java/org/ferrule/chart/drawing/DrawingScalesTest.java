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
import java.util.stream.DoubleStream;

import org.ferrule.chart.DeviceMaker;
import org.ferrule.chart.Drawn;
import org.ferrule.chart.Shelf;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Taper;
import org.ferrule.fit.passage.Through;
import org.ferrule.picture.Box;
import org.ferrule.picture.Ellipse;
import org.ferrule.picture.Line;
import org.ferrule.picture.Path;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.Segment;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** Drawings along and across devices: figures on paper are those of the device, in the scale of the drawing. */
class DrawingScalesTest {
    private static final ReasonWords WORDS = ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final LongitudinalDrawing DRAWING = new LongitudinalDrawing(WORDS);
    private static final List<MarkerBand> MARKERS = List.of(new MarkerBand(mm(5), mm(1)),
            new MarkerBand(mm(18), mm(0)));
    private static final Device BALLOON = Shelf.balloon("2.5", "0.82 mm");

    private static Drawn device(Device device) {
        return Drawn.of(DRAWING.ofDevice(ReadDevice.of(device, Shelf.RULES), Shelf.RULES, MARKERS, 260, 110));
    }

    private static DeviceLayout layout(Device device) {
        return DRAWING.layoutOfDevice(ReadDevice.of(device, Shelf.RULES), Shelf.RULES, MARKERS, 260, 110);
    }

    private static Drawn pair(FitQuestion question) {
        return Drawn.of(DRAWING.ofPair(question, Shelf.answer(question).in(), Phase.IN, 260, 110));
    }

    private static List<Box> boxes(Drawn drawn, String group) {
        return drawn.marks(group).stream().map(Drawn.Mark::box).toList();
    }

    private static List<Line> lines(Drawn drawn, String group) {
        return drawn.marks(group).stream().map(Drawn.Mark::element).filter(Line.class::isInstance)
                .map(Line.class::cast).toList();
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
        List<Point> points = paths.get(0).segments().stream().map(StackedEnds::of).toList();
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

    /** The end of each piece of a path. */
    private static final class StackedEnds {
        static Point of(Segment segment) {
            return segment.points().get(segment.points().size() - 1);
        }
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

    /** 0.070 in: 1.778 mm, of which 0.02 mm more or less are possible by the rules. */
    @Test
    void wallsOfALumenHaveABandWhereTheyMayLie() {
        Drawn drawn = pair(Shelf.question(Shelf.guide("6 Fr", "0.070 in"), BALLOON));
        List<Box> lumen = boxes(drawn, "lumen:working");
        double scale = boxes(drawn, "section:balloon").get(2).heightMm() / 0.82;
        double low = lumen.get(0).centre().yMm();
        assertEquals(1.798 * scale, lumen.get(0).heightMm(), 1e-3);
        Box upperWall = lumen.get(1);
        Box upperBand = lumen.get(2);
        Box lowerWall = lumen.get(3);
        assertEquals(1.6, upperWall.heightMm(), 1e-6);
        assertEquals(1.6, lowerWall.heightMm(), 1e-6);
        assertEquals(lumen.get(0).yMm(), upperWall.bottomMm(), 1e-6);
        assertEquals(lumen.get(0).bottomMm(), lowerWall.yMm(), 1e-6);
        assertEquals(0.02 * scale, upperBand.heightMm(), 1e-3);
        assertEquals(upperWall.bottomMm(), upperBand.yMm(), 1e-6);
        List<Double> lines = lumen.subList(5, 9).stream().map(b -> b.yMm() - low).toList();
        assertEquals(-0.889 * scale, lines.get(0), 1e-3);
        assertEquals(-0.899 * scale - 1.6, lines.get(1), 1e-3);
        assertEquals(0.889 * scale, lines.get(2), 1e-3);
        assertEquals(0.899 * scale + 1.6, lines.get(3), 1e-3);
        assertTrue(drawn.text().contains("working lumen 1.77 mm") || drawn.text().contains("working lumen 1.78 mm"),
                drawn.text());
    }

    /** The tube of 0.057 in and the burr of 1.75 mm overlap by 0.3022 mm where both are nominal. */
    @Test
    void theMarkOfThePlaceThatDecidesIsAsLongAsTheOverlap() {
        Drawn drawn = pair(Shelf.question(Shelf.extension(), Shelf.burr()));
        double scale = boxes(drawn, "section:burr").get(2).heightMm() / 1.75;
        List<Line> lines = lines(drawn, "limiting");
        // The burr lies on the lowest place of the narrowest lumen, 0.01 mm above its nominal floor.
        assertEquals((1.75 - 0.057 * 25.4 + 0.01) * scale,
                Math.abs(lines.get(0).from().yMm() - lines.get(0).to().yMm()),
                1e-3);
        assertEquals(lines.get(0).from().xMm(), lines.get(0).to().xMm(), 1e-9);
        for (Line tick : lines.subList(1, 3)) {
            assertEquals(2.4, tick.to().xMm() - tick.from().xMm(), 1e-9);
            assertEquals(lines.get(0).from().xMm(), (tick.to().xMm() + tick.from().xMm()) / 2, 1e-9);
        }
        assertEquals(DoubleStream.of(lines.get(0).from().yMm(), lines.get(0).to().yMm()).sorted().boxed().toList(),
                DoubleStream.of(lines.get(1).from().yMm(), lines.get(2).from().yMm()).sorted().boxed().toList());
    }

    private static FitQuestion crowded(List<Occupant> inside, Optional<Through> through) {
        FitQuestion alone = Shelf.question(Shelf.guide("7 Fr", "0.081 in"), Shelf.microcatheter());
        return new FitQuestion(alone.outer(), alone.lumen(), alone.inner(), alone.direction(), alone.reach(),
                new Conditions(inside, through, List.of(), false), alone.rules());
    }

    private static Occupant occupant(Device device, double tipAhead) {
        return new Occupant(ReadDevice.of(device, Shelf.RULES), mm(tipAhead), false);
    }

    /** Both hang from the narrowest place of the lumen; the second one below the thickest place of the first. */
    @Test
    void whatLiesThereAlreadyHangsFromTheCeilingOneBelowTheOther() {
        Device other = new DeviceMaker("rod", "Rod", DeviceKind.OTHER, "").length("150 cm")
                .section("rod", 0, 1500, "0.5 mm").make();
        Drawn drawn = pair(crowded(List.of(occupant(Shelf.wire(), -120), occupant(other, 30)), Optional.empty()));
        Box lumen = boxes(drawn, "lumen:working").get(0);
        Box wire = boxes(drawn, "occupant:wire").stream().reduce(Box::union).orElseThrow();
        Box rod = boxes(drawn, "occupant:rod").stream().reduce(Box::union).orElseThrow();
        double scale = rod.heightMm() / 0.5;
        assertEquals(0.014 * 25.4 * scale, wire.heightMm(), 1e-6);
        double ceiling = lumen.yMm() + 0.02 * scale;
        assertEquals(ceiling, wire.yMm(), 1e-3);
        // By the rules a wire may be 0.005 mm thicker.
        assertEquals(ceiling + (0.014 * 25.4 + 0.005) * scale, rod.yMm(), 1e-3);
        assertTrue(wire.rightMm() < rod.rightMm(), "tips 150 mm apart");
        assertTrue(drawn.text().contains("pale: what lies there already"), drawn.text());
    }

    @Test
    void aTubeIsDrawnWithItsLumenAndItsCollarAcrossIt() {
        Device extension = Shelf.extension();
        Drawn drawn = pair(crowded(List.of(), Optional.of(new Through(ReadDevice.of(extension, Shelf.RULES),
                extension.mainLumen().orElseThrow(), mm(80)))));
        Box tube = boxes(drawn, "tube:extension").get(0);
        double scale = tube.heightMm() / (0.067 * 25.4);
        Line collar = lines(drawn, "collar").get(0);
        assertEquals(tube.xMm(), collar.from().xMm(), 1e-6);
        assertEquals((0.067 * 25.4 + 0.03) * scale, collar.to().yMm() - collar.from().yMm(), 1e-3);
        assertEquals(tube.centre().yMm(), (collar.to().yMm() + collar.from().yMm()) / 2, 1e-6);
        Box bore = drawn.groups().stream().filter(g -> g.id().startsWith("lumen:") && g.id().contains("tube"))
                .flatMap(g -> drawn.marks(g.id()).stream()).map(Drawn.Mark::box).findFirst().orElseThrow();
        assertEquals(0.057 * 25.4 * scale, bore.heightMm(), 1e-6);
        assertEquals(tube.xMm(), bore.xMm(), 1e-6);
        assertEquals(tube.rightMm(), bore.rightMm(), 1e-6);
        assertEquals(tube.centre().yMm(), bore.centre().yMm(), 1e-6);
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

    private static List<Ellipse> circles(Drawn drawn, String group) {
        return drawn.marks(group).stream().map(Drawn.Mark::element).filter(Ellipse.class::isInstance)
                .map(Ellipse.class::cast).toList();
    }

    private static Drawn across(FitQuestion question) {
        PhaseAnswer answer = Shelf.answer(question).in();
        return Drawn.of(new CrossSectionDrawing(WORDS).ofPair(question, answer, Phase.IN, 110, 60));
    }

    @Test
    void anOvalIsAsWideAndAsHighAsItIs() {
        Device flat = new DeviceMaker("flat", "Flat", DeviceKind.OTHER, "").length("150 cm")
                .oval("oval shaft", 0, 1500, "1.10 mm", "0.80 mm").make();
        Drawn drawn = across(Shelf.question(Shelf.guide("6 Fr", "0.070 in"), flat));
        double scale = circles(drawn, "lumen").get(3).radiusXMm() / 0.889;
        Box oval = boxes(drawn, "shaft").get(0);
        assertEquals(1.10 * scale, oval.widthMm(), 0.02 * scale);
        assertEquals(0.80 * scale, oval.heightMm(), 0.02 * scale);
        assertTrue(drawn.text().contains("oval shaft oval, 0.80 mm high"), drawn.text());
        assertTrue(drawn.text().contains("oval shaft in working lumen, across"), drawn.text());
    }

    @Test
    void whatIsNotKnownIsABrokenCircleOfLittleMoreThanHalfTheLumen() {
        Device bare = new DeviceMaker("bare", "Bare catheter", DeviceKind.OTHER, "").make();
        Drawn drawn = across(Shelf.question(Shelf.guide("6 Fr", "0.070 in"), bare));
        assertEquals("?", drawn.text("shaft"));
        Ellipse guess = circles(drawn, "shaft").get(0);
        assertEquals(0.55 * circles(drawn, "lumen").get(2).radiusXMm(), guess.radiusXMm(), 1e-6);
        assertEquals(circles(drawn, "lumen").get(2).centre(), guess.centre());
    }
}
