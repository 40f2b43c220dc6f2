/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.profile.Compared.devices;
import static org.ferrule.profile.Compared.length;
import static org.ferrule.profile.Laid.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.Drawn.Mark;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.device.Parts.MarkerPart;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Ellipse;
import org.ferrule.picture.Line;
import org.ferrule.picture.Path;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.picture.Rect;
import org.ferrule.picture.Segment;
import org.ferrule.profile.Laid;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.curve.Reading;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the parts of the plot of a comparison lie. */
class ProfileLayoutTest {
    private static final ProfileWords WORDS = ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final SampleDevice SMALL = balloon("small", "0.85 mm", "0.6 mm");
    private static final SampleDevice LARGE = balloon("large", "1.1 mm", "0.7 mm");
    private static final ProfileComparison TWO = devices(SMALL, LARGE).compare();

    private static ProfilePlot plot(ProfileComparison comparison) {
        return new ProfilePlot(comparison, View.distal(comparison), WORDS, 240, 150);
    }

    /** The corners of a path that was drawn. */
    private static List<Point> points(Mark mark) {
        return ((Path) mark.element()).segments().stream().map(Segment::points).filter(p -> !p.isEmpty())
                .map(p -> p.get(0)).toList();
    }

    private static void assertAt(PlotArea area, double station, double diameter, Point place) {
        assertNear(area.x(station), place.xMm(), "station " + station);
        assertNear(area.y(diameter), place.yMm(), "diameter " + diameter);
    }

    @ParameterizedTest
    @CsvSource({ "240, 150, 2", "100, 130, 3", "180, 140, 8", "260, 90, 2" })
    void wordsStandApartAtEverySize(double widthMm, double heightMm, int count) {
        SampleDevice[] balloons = IntStream.range(0, count).mapToObj(i -> balloon("balloon " + i, "0.8" + i + " mm",
                "0.6 mm")).toArray(SampleDevice[]::new);
        ProfileComparison comparison = devices(balloons).compare();
        ProfilePlot plot = new ProfilePlot(comparison, View.distal(comparison), WORDS, widthMm, heightMm);
        Picture picture = plot.picture();
        assertEquals(widthMm, picture.widthMm());
        assertEquals(heightMm, picture.heightMm());
        Drawn drawn = Drawn.of(picture);
        assertEquals(List.of(), drawn.outside(picture.paper().inset(1.95)));
        assertEquals(List.of(), drawn.overlaps());
        Laid.assertNumbersAlong(picture, plot.area(), View.distal(comparison).length().mm() >= 60 ? 10 : 1);
        Laid.assertNumbersAcross(picture, plot.area(), 1);
        assertNear(widthMm - 2, plot.area().box().rightMm(), "the plot goes to the margin");
    }

    @Test
    void longViewsAreNumberedInCentimetresShortOnesInMillimetres() {
        ProfilePlot whole = new ProfilePlot(TWO, View.whole(TWO), WORDS, 240, 150);
        Laid.assertNumbersAlong(whole.picture(), whole.area(), 10);
        assertTrue(Drawn.of(whole.picture()).text().contains("cm from the distal tip"));
        View tip = View.whole(TWO).along(length("0 mm"), length("59 mm"));
        ProfilePlot close = new ProfilePlot(TWO, tip, WORDS, 240, 150);
        Laid.assertNumbersAlong(close.picture(), close.area(), 1);
        assertTrue(Drawn.of(close.picture()).text().contains("mm from the distal tip"));
        ProfilePlot six = new ProfilePlot(TWO, tip.along(length("0 mm"), length("60 mm")), WORDS, 240, 150);
        assertTrue(Drawn.of(six.picture()).text().contains("cm from the distal tip"));
    }

    /** The largest diameter in sight is 1.1 mm; one that is out of sight or a lumen that is larger counts so too. */
    @Test
    void diametersGoFromZeroToALittleAboveTheLargestInSight() {
        assertNear(0, plot(TWO).area().bottom(), "from zero");
        assertNear(1.1 * 1.14, plot(TWO).area().top(), "up to the larger balloon");
        View shafts = View.whole(TWO).along(length("30 cm"), length("60 cm"));
        assertNear((0.7 + 0.3556) * 1.14, new ProfilePlot(TWO, shafts, WORDS, 240, 150).area().top(),
                "the shaft with its wire");
        ProfileComparison inGuide = devices(SMALL, LARGE).in(guide("guide", "1.8 mm")).compare();
        assertNear(1.8 * 1.14, plot(inGuide).area().top(), "the lumen that is to be passed");
        View fixed = View.distal(TWO).of(Optional.of(new View.Diameters(length("0.5 mm"), length("0.9 mm"))));
        PlotArea area = new ProfilePlot(TWO, fixed, WORDS, 240, 150).area();
        assertNear(0.5, area.bottom(), "as asked");
        assertNear(0.9, area.top(), "as asked");
    }

    @Test
    void aCurveFollowsTheShaftFromTipToHubInUprightSteps() {
        ProfilePlot plot = new ProfilePlot(TWO, View.whole(TWO), WORDS, 240, 150);
        List<Point> outer = points(Drawn.of(plot.picture()).marks("curve:small:outer").get(0));
        double[][] corners = { { 0, 0.43 }, { 4, 0.43 }, { 4, 0.85 }, { 23, 0.85 }, { 23, 0.8 }, { 250, 0.8 },
            { 250, 0.6 }, { 1420, 0.6 } };
        assertEquals(corners.length, outer.size());
        for (int i = 0; i < corners.length; i++) {
            assertAt(plot.area(), corners[i][0], corners[i][1], outer.get(i));
        }
    }

    @Test
    void whereADiameterIsMissingTheCurveBreaksOff() {
        SampleDevice gap = device("gap", DeviceKind.MICROCATHETER).length("135 cm").section("tip", "0 mm", "1 cm",
                "0.6 mm").section("shaft", "2 cm", "135 cm", "0.8 mm");
        ProfileComparison comparison = devices(gap, SMALL).compare();
        ProfilePlot plot = new ProfilePlot(comparison, View.whole(comparison).along(length("0 mm"), length("30 mm")),
                WORDS, 240, 150);
        Drawn drawn = Drawn.of(plot.picture());
        List<Mark> runs = drawn.marks("curve:gap:outer");
        assertEquals(2, runs.size());
        assertAt(plot.area(), 10, 0.6, points(runs.get(0)).get(1));
        assertAt(plot.area(), 20, 0.8, points(runs.get(1)).get(0));
        Drawn.Words asked = drawn.words("?");
        assertNear(plot.area().x(15), asked.box().centre().xMm(), "asked in the middle of the gap");
        Line dotted = (Line) drawn.marks().stream().filter(m -> m.element() instanceof Line line
                && line.stroke().dash().equals(Dash.DOTTED)).findFirst().orElseThrow().element();
        assertNear(plot.area().x(10), dotted.from().xMm(), "dotted in the lane");
        assertNear(plot.area().x(20), dotted.to().xMm(), "dotted in the lane");
        assertNear(asked.box().centre().yMm(), dotted.from().yMm(), "in the lane");
    }

    /** As printed 0.85 mm and 0.05 mm to both sides, and so from 0 to 1 m: a band of four corners between two edges. */
    @Test
    void aBandLiesBetweenTheEndsOfTheInterval() {
        ProfileComparison comparison = devices(rod("stated", DeviceKind.MICROCATHETER, "100 cm", "0.85 mm ±0.05"),
                rod("exact", DeviceKind.MICROCATHETER, "100 cm", "0.7 mm")).compare();
        ProfilePlot plot = new ProfilePlot(comparison, View.whole(comparison), WORDS, 240, 150);
        List<Mark> band = Drawn.of(plot.picture()).marks("band:stated");
        assertEquals(3, band.size());
        double[][] corners = { { 0, 0.8 }, { 1000, 0.8 }, { 1000, 0.9 }, { 0, 0.9 } };
        for (int i = 0; i < 4; i++) {
            assertAt(plot.area(), corners[i][0], corners[i][1], points(band.get(0)).get(i));
        }
        assertAt(plot.area(), 0, 0.8, points(band.get(1)).get(0));
        assertAt(plot.area(), 1000, 0.9, points(band.get(2)).get(1));
        assertEquals(Dash.SOLID, ((Path) band.get(1).element()).style().stroke().orElseThrow().dash());
        assertEquals(List.of(), Drawn.of(plot.picture()).marks("band:exact"), "no band where nothing is open");
    }

    @Test
    void edgesOfWhatTheRuleSetAssumesAreDotted() {
        ProfileComparison comparison = devices(SMALL, LARGE).under(TestRules.usual()).compare();
        List<Mark> band = Drawn.of(plot(comparison).picture()).marks("band:small");
        assertEquals(Dash.DOTTED, ((Path) band.get(1).element()).style().stroke().orElseThrow().dash());
    }

    @Test
    void curvesThatAreOutOfSightAreNotDrawn() {
        ProfilePlot shafts = new ProfilePlot(TWO, View.whole(TWO).along(length("30 cm"), length("60 cm")), WORDS, 240,
                150);
        List<Point> outer = points(Drawn.of(shafts.picture()).marks("curve:small:outer").get(0));
        assertEquals(2, outer.size());
        assertEquals(List.of(), Drawn.of(shafts.picture()).marks("curve:small:inner:wire"));
    }

    @Test
    void everyCurveIsLetteredAtAPlaceOfItsOwn() {
        ProfilePlot plot = plot(TWO);
        Drawn drawn = Drawn.of(plot.picture());
        double before = plot.area().box().xMm();
        for (String device : List.of("small", "large")) {
            Mark ring = drawn.marks("tag:" + device).get(0);
            Point centre = ring.box().centre();
            assertTrue(ring.element() instanceof Ellipse);
            double station = plot.area().along(centre.xMm());
            double expected = TWO.valuesAt(Length.ofMm(station))
                    .get(device.equals("small") ? 0 : 1).outer() instanceof Reading.Known known
                            ? known.figure().centre().mm() : Double.NaN;
            assertNear(plot.area().y(expected), centre.yMm(), "on the curve");
            Drawn.Words letter = drawn.words().stream().filter(w -> w.group().equals("tag:" + device)).findFirst()
                    .orElseThrow();
            assertNear(centre.xMm(), letter.box().centre().xMm(), "in the ring");
            assertNear(centre.yMm(), letter.box().centre().yMm(), "in the ring");
            assertTrue(ring.box().heightMm() > letter.box().heightMm() * 1.5, "the ring goes round the letter");
            assertTrue(centre.xMm() > before + 30, "away from the one before");
            before = centre.xMm();
        }
        assertTrue(before < plot.area().box().rightMm() - 20);
    }

    @Test
    void aLetterGoesWhereItsCurveIsInSight() {
        SampleDevice stub = device("stub", DeviceKind.MICROCATHETER).length("135 cm").section("tip", "0 mm", "2 cm",
                "0.6 mm");
        ProfileComparison comparison = devices(SMALL, stub).compare();
        ProfilePlot plot = new ProfilePlot(comparison, View.whole(comparison).along(length("0 mm"), length("100 mm")),
                WORDS, 240, 150);
        Point tag = Drawn.of(plot.picture()).marks("tag:stub").get(0).box().centre();
        assertNear(plot.area().y(0.6), tag.yMm(), "where it is known");
        assertTrue(plot.area().along(tag.xMm()) <= 20 && plot.area().along(tag.xMm()) > 15, "as near as can be");
        View high = View.whole(comparison).of(Optional.of(new View.Diameters(length("0.62 mm"), length("1 mm"))));
        assertEquals(List.of(), Drawn.of(new ProfilePlot(comparison, high, WORDS, 240, 150).picture())
                .marks("tag:stub"), "nowhere in sight");
    }

    @Test
    void lumensAreLinesAcrossThePlotWithTheirInterval() {
        ProfileComparison comparison = devices(SMALL, LARGE).in(guide("wide", "1.8..1.9 mm"))
                .in(guide("exact", "1.4 mm")).compare();
        ProfilePlot plot = plot(comparison);
        Drawn drawn = Drawn.of(plot.picture());
        List<Mark> wide = drawn.marks("line:L1");
        Box band = wide.stream().filter(m -> m.element() instanceof Rect).findFirst().orElseThrow().box();
        assertNear(plot.area().y(1.9), band.yMm(), "upper end");
        assertNear(plot.area().y(1.8), band.bottomMm(), "lower end");
        assertNear(plot.area().box().xMm(), band.xMm(), "left");
        assertNear(plot.area().box().rightMm(), band.rightMm(), "right");
        Box line = drawn.marks("line:L2").get(0).box();
        assertTrue(drawn.marks("line:L2").get(0).element() instanceof Line, "no band where nothing is open");
        assertNear(plot.area().y(1.4), line.yMm(), "the line");
        assertNear(0, line.heightMm(), "level");
        assertNear(plot.area().box().xMm(), line.xMm(), "left");
        assertNear(plot.area().box().rightMm(), line.rightMm(), "right");
        Box sign = drawn.words("L2").box();
        assertNear(line.yMm() - 0.7, sign.bottomMm(), "its sign stands on it");
        assertTrue(sign.rightMm() < plot.area().box().rightMm() - 1);
        assertTrue(sign.rightMm() < drawn.words("L1").box().xMm(), "left of that of the first");
    }

    @Test
    void signsOfContactsStandWhereTheDeviceMeetsTheWall() {
        SampleDevice doubtful = device("doubtful", DeviceKind.MICROCATHETER).length("135 cm")
                .section("tip", "0 mm", "5 mm", "0.95 mm ±0.1").section("shaft", "5 mm", "135 cm", "1.05 mm ±0.01");
        ProfileComparison comparison = devices(doubtful, SMALL).in(guide("guide", "1.0 mm")).compare();
        ProfilePlot plot = plot(comparison);
        Drawn drawn = Drawn.of(plot.picture());
        List<Mark> stop = drawn.marks("contact:doubtful:L1:stop");
        assertNear(plot.area().x(5), stop.get(0).box().centre().xMm(), "a ground of paper");
        assertNear(plot.area().y(1.05), stop.get(0).box().centre().yMm(), "a ground of paper");
        List<Mark> cross = stop.stream().filter(m -> m.element() instanceof Line).toList();
        assertEquals(2, cross.size());
        for (Mark line : cross) {
            assertNear(plot.area().x(5), line.box().centre().xMm(), "a cross at the contact");
            assertNear(plot.area().y(1.05), line.box().centre().yMm(), "a cross at the contact");
            assertNear(2.2, line.box().widthMm(), "size");
            assertNear(2.2, line.box().heightMm(), "size");
        }
        Line one = (Line) cross.get(0).element();
        Line other = (Line) cross.get(1).element();
        assertTrue((one.to().yMm() - one.from().yMm()) * (other.to().yMm() - other.from().yMm()) < 0, "lines cross");
        Drawn.Words label = drawn.words().stream().filter(w -> w.group().equals("contact:doubtful:L1:stop")).findFirst()
                .orElseThrow();
        assertEquals("A L1", label.text());
        assertNear(plot.area().x(5) + 1.7, label.box().xMm(), "right of it");
        assertNear(plot.area().y(1.05) - 0.6, label.box().bottomMm(), "and above");
        Mark worst = drawn.marks("contact:doubtful:L1:worst").get(0);
        assertNear(plot.area().x(0), worst.box().centre().xMm(), "a triangle where it may stop");
        assertNear(plot.area().y(1.05) - 1.1, worst.box().yMm(), "at its largest");
        assertNear(2.2, worst.box().widthMm(), "size");
        assertNear(1.98, worst.box().heightMm(), "size");
        assertTrue(drawn.text().contains("stops") && drawn.text().contains("too large in the worst case"));
    }

    @Test
    void theLegendExplainsOnlyWhatIsThere() {
        String text = Drawn.of(plot(TWO).picture()).text();
        assertTrue(!text.contains("stops") && !text.contains("too large in the worst case"), text);
        ProfileComparison apart = devices(rod("thin", DeviceKind.MICROCATHETER, "135 cm", "0.7 mm"),
                rod("thick", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm")).compare();
        assertTrue(!Drawn.of(plot(apart).picture()).text().contains("curves cross"));
    }

    @Test
    void ringsStandWhereCurvesCross() {
        ProfileComparison comparison = devices(rod("even", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm"), LARGE)
                .compare();
        ProfilePlot plot = plot(comparison);
        List<Mark> rings = Drawn.of(plot.picture()).marks("crossing:A:B");
        assertEquals(comparison.crossings().size(), rings.size());
        assertNear(plot.area().x(4), rings.get(0).box().centre().xMm(), "at the balloon");
        assertNear(plot.area().y(0.9), rings.get(0).box().centre().yMm(), "on the first device");
        assertNear(1.6, rings.get(0).box().widthMm(), "size");
        assertTrue(Drawn.of(plot.picture()).text().contains("curves cross"));
    }

    @Test
    void aLaneForEachDeviceShowsItsMarks() {
        Parts parts = new Parts(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                List.of(new MarkerPart(length("5 mm"), Optional.of(length("1 mm")))), Optional.empty());
        SampleDevice marked = balloon("marked", "0.9 mm", "0.6 mm").section("ring", "30 mm", "34 mm", "0.8 mm").rigid()
                .parts(parts);
        ProfileComparison comparison = devices(SMALL, marked).compare();
        ProfilePlot plot = new ProfilePlot(comparison, View.whole(comparison), WORDS, 240, 150);
        Drawn drawn = Drawn.of(plot.picture());
        List<Drawn.Words> letters = drawn.words().stream().filter(w -> w.text().matches("[AB]")
                && w.group().isEmpty()).toList();
        assertEquals(2, letters.size());
        assertNear(MarkLane.HEIGHT_MM,
                letters.get(1).box().centre().yMm() - letters.get(0).box().centre().yMm(), "lanes lie close");
        letters.forEach(l -> assertNear(plot.area().box().xMm() - 1, l.box().rightMm(), "left of the lane"));
        double middle = letters.get(1).box().centre().yMm();
        Box rigid = drawn.marks("mark:marked:1").get(0).box();
        assertNear(plot.area().x(30), rigid.xMm(), "rigid from");
        assertNear(plot.area().x(34), rigid.rightMm(), "rigid to");
        assertNear(middle, rigid.centre().yMm(), "rigid");
        assertNear(1.2, rigid.heightMm(), "rigid");
        Box marker = drawn.marks("mark:marked:0").get(0).box();
        assertNear(plot.area().x(5), marker.xMm(), "marker from");
        assertNear(0.5, marker.widthMm(), "a marker is never too thin to be seen");
        assertNear(middle, marker.centre().yMm(), "marker");
        assertNear(2.4, marker.heightMm(), "marker");
        Box port = drawn.marks("mark:marked:2").get(0).box();
        assertNear(plot.area().x(250), port.centre().xMm(), "port");
        assertNear(middle, port.bottomMm(), "it points at the lane");
        assertNear(1.7, port.heightMm(), "port");
        assertNear(2.2, port.widthMm(), "port");
        double axis = plot.area().box().bottomMm();
        assertTrue(letters.get(0).box().centre().yMm() > axis + 6, "below the numbers");
        ProfilePlot tip = new ProfilePlot(comparison, View.whole(comparison).along(length("0 mm"), length("40 mm")),
                WORDS, 240, 150);
        assertNear(tip.area().x(6), Drawn.of(tip.picture()).marks("mark:marked:0").get(0).box().rightMm(), "marker to");
    }

    @Test
    void theLandmarkIsALineThroughThePlotWhereItIsInSight() {
        ProfilePlot plot = plot(TWO);
        assertEquals(2, uprights(plot).size(), "the axis and the landmark");
        assertNear(plot.area().x(0), uprights(plot).get(1).xMm(), "at its station");
        ProfilePlot away = new ProfilePlot(TWO, View.whole(TWO).along(length("10 mm"), length("90 mm")), WORDS, 240,
                150);
        assertEquals(1, uprights(away).size(), "the axis alone");
    }

    private static List<Box> uprights(ProfilePlot plot) {
        Box box = plot.area().box();
        return Drawn.of(plot.picture()).marks().stream().map(Mark::box).filter(m -> Laid.near(box.yMm(), m.yMm())
                && Laid.near(box.heightMm(), m.heightMm()) && Laid.near(0, m.widthMm())).toList();
    }
}
