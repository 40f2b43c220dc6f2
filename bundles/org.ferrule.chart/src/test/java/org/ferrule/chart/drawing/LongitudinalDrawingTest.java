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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.ferrule.chart.DeviceMaker;
import org.ferrule.chart.Drawn;
import org.ferrule.chart.Shelf;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.picture.Box;
import org.ferrule.picture.Path;
import org.ferrule.picture.Picture;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LongitudinalDrawingTest {
    private static final ReasonWords WORDS = ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final LongitudinalDrawing DRAWING = new LongitudinalDrawing(WORDS);
    /** In mm; the first is 300 x 150 pixels on a screen of 96 dots an inch. */
    private static final double[][] SIZES = { { 79.4, 39.7 }, { 60, 30 }, { 120, 45 }, { 160, 60 }, { 260, 110 } };

    static Stream<Device> devices() {
        return Stream.of(Shelf.balloon("2.5 x 15", "0.82 mm"), Shelf.dualLumen(), Shelf.unlabelled(), Shelf.burr(),
                Shelf.extension(), Shelf.guide("6 Fr", "0.070 in"), Shelf.guide("8 Fr", ""), Shelf.microcatheter(),
                Shelf.claimedStent("0.066 in"), Shelf.wire());
    }

    static Stream<FitQuestion> questions() {
        return Stream.of(Shelf.guide("5 Fr", "1.20 mm"), Shelf.guide("6 Fr", "0.070 in"), Shelf.guide("8 Fr", ""),
                Shelf.extension(), Shelf.microcatheter())
                .flatMap(outer -> devices().map(inner -> Shelf.question(outer, inner)));
    }

    private static Picture draw(Device device, double[] size) {
        List<MarkerBand> markers = List.of(new MarkerBand(mm(5), mm(1)), new MarkerBand(mm(18), mm(0)));
        return DRAWING.ofDevice(ReadDevice.of(device, Shelf.RULES), Shelf.RULES, markers, size[0], size[1]);
    }

    private static void assertTidy(Picture picture) {
        Drawn drawn = Drawn.of(picture);
        assertEquals(List.of(), drawn.overlaps(), picture.title());
        assertEquals(List.of(), drawn.outside(picture.paper()), picture.title());
        drawn.forEachLine(line -> assertTrue(line.sizePt() >= 6.5, line.toString()));
    }

    @ParameterizedTest
    @MethodSource("devices")
    void wordsOfADeviceKeepApartAndOnThePaper(Device device) {
        for (double[] size : SIZES) {
            assertTidy(draw(device, size));
        }
    }

    @ParameterizedTest
    @MethodSource("questions")
    void wordsOfAPairKeepApartAndOnThePaper(FitQuestion question) {
        FitAnswer answer = Shelf.answer(question);
        for (double[] size : SIZES) {
            for (Phase phase : Phase.values()) {
                assertTidy(DRAWING.ofPair(question, answer.in(phase), phase, size[0], size[1]));
            }
        }
    }

    /** In small drawings words are shortened, but no section goes without. */
    @ParameterizedTest
    @MethodSource("devices")
    void everySectionIsLabelled(Device device) {
        for (double[] size : SIZES) {
            List<String> words = Drawn.of(draw(device, size)).words().stream().map(Drawn.Words::text).toList();
            device.sections().forEach(section -> assertTrue(
                    words.stream().anyMatch(word -> word.startsWith(section.name().substring(0, 1))),
                    section.name() + " in " + words));
        }
    }

    @Test
    void namesSectionsLumensMarkersPortAndWire() {
        Drawn drawn = Drawn.of(draw(Shelf.balloon("2.5 x 15", "0.82 mm"), SIZES[3]));
        for (String id : List.of("section:tip", "section:balloon", "section:distal shaft", "section:hypotube",
                "lumen:wire", "marker:0", "marker:1", "port", "wire")) {
            assertTrue(drawn.hasGroup(id), id);
        }
        assertTrue(drawn.text().contains("exit port"));
    }

    /** The number in the caption is the one by which height and width of the drawing differ from the device's. */
    @Test
    void captionTellsHowMuchLargerDiametersAreDrawn() {
        Drawn drawn = Drawn.of(draw(Shelf.extension(), SIZES[3]));
        Box tube = outline(drawn, "section:tube");
        double drawnRatio = tube.heightMm() / tube.widthMm();
        double trueRatio = 0.067 * 25.4 / 250;
        Matcher number = Pattern.compile("drawn (\\d+) times larger").matcher(drawn.text());
        assertTrue(number.find(), drawn.text());
        assertEquals(drawnRatio / trueRatio, Double.parseDouble(number.group(1)), 5);
    }

    private static Box outline(Drawn drawn, String id) {
        return drawn.groups().stream().filter(g -> g.id().equals(id)).flatMap(g -> g.group().elements().stream())
                .filter(Path.class::isInstance).map(Path.class::cast)
                .filter(p -> p.style().stroke().isPresent()).findFirst().orElseThrow().bounds();
    }

    @Test
    void layoutTellsWhereASectionIsDrawn() {
        ReadDevice device = ReadDevice.of(Shelf.extension(), Shelf.RULES);
        Box tube = outline(Drawn.of(draw(Shelf.extension(), SIZES[3])), "section:tube");
        List<MarkerBand> markers = List.of(new MarkerBand(mm(5), mm(1)), new MarkerBand(mm(18), mm(0)));
        DeviceLayout layout = DRAWING.layoutOfDevice(device, Shelf.RULES, markers, SIZES[3][0], SIZES[3][1]);
        assertEquals(tube.rightMm(), layout.x(0), 1e-6);
        assertEquals(tube.xMm(), layout.x(250), 1e-6);
        assertEquals(tube.heightMm(), layout.heightMm(0.067 * 25.4), 1e-3);
        assertEquals(tube.yMm() + tube.heightMm() / 2, layout.centreY(), 1e-3);
        assertEquals(layout.centreY(), layout.lumenY("tube", 100).orElseThrow(), 1e-6);
    }

    private static Box inner(Drawn drawn, String id, int index) {
        return drawn.marks().stream().filter(mark -> mark.group().equals(id)).skip(2L * index).limit(2)
                .map(Drawn.Mark::box).reduce(Box::union).orElseThrow();
    }

    @Test
    void ofAnOvalBothMeasuresAreDrawnAndTold() {
        Drawn drawn = Drawn.of(draw(Shelf.dualLumen(), SIZES[4]));
        Box width = outline(drawn, "section:oval shaft");
        Box height = inner(drawn, "inner:oval shaft", 0);
        assertEquals(0.80 / 1.10, height.heightMm() / width.heightMm(), 1e-6);
        assertEquals(width.widthMm(), height.widthMm(), 1e-6);
        assertTrue(drawn.text().contains("1.10 mm \u00d7 0.80 mm"), drawn.text());
        assertTrue(drawn.text().contains("dashed the height"), drawn.text());
    }

    /** The centres lie 0.3 mm apart; the circle round both reaches from the far edge of one to that of the other. */
    @Test
    void discsOfACompositeSectionLieWhereTheCircleRoundThemHasThem() {
        Device device = new DeviceMaker("crown", "Crown", DeviceKind.OTHER, "")
                .discs("crown", 0, 10, List.of("0.80 mm", "0.60 mm"), List.of(0.0, 0.3)).make();
        ReadDevice read = ReadDevice.of(device, Shelf.RULES);
        DeviceLayout layout = DRAWING.layoutOfDevice(read, Shelf.RULES, List.of(), SIZES[4][0], SIZES[4][1]);
        double circle = 0.4 + 0.3 + 0.3;
        assertEquals(0.4 - circle / 2, layout.discMm("crown", 0).orElseThrow(), 1e-5);
        assertEquals(circle / 2 - 0.3, layout.discMm("crown", 1).orElseThrow(), 1e-5);
        assertTrue(layout.discMm("crown", 2).isEmpty());
        Drawn drawn = Drawn.of(draw(device, SIZES[4]));
        assertEquals(layout.heightMm(0.6), inner(drawn, "inner:crown", 1).heightMm(), 1e-6);
        assertEquals(outline(drawn, "section:crown").yMm(), inner(drawn, "inner:crown", 1).yMm(), 1e-3);
        assertTrue(drawn.text().contains("along x"), drawn.text());
        assertTidy(draw(device, SIZES[0]));
    }

    @Test
    void aSmallDrawingTellsTheScaleToo() {
        for (double[] size : SIZES) {
            String text = Drawn.of(draw(Shelf.balloon("2.5 x 15", "0.82 mm"), size)).text();
            assertTrue(text.contains("Diameters"), text);
        }
    }

    @Test
    void whatIsNotStatedIsAskedInTheDrawing() {
        Drawn drawn = Drawn.of(draw(Shelf.unlabelled(), SIZES[3]));
        assertEquals("?", drawn.text("section:window"));
        assertTrue(drawn.text().contains("window not stated"), drawn.text());
    }

    @Test
    void theLimitingPlaceIsMarkedWithTheWorstClearance() {
        FitQuestion question = Shelf.question(Shelf.extension(), Shelf.burr());
        Drawn drawn = Drawn.of(DRAWING.ofPair(question, Shelf.answer(question).in(), Phase.IN, 160, 60));
        assertTrue(drawn.hasGroup("limiting"));
        assertTrue(drawn.text().contains("overlap 0.36 mm worst case"), drawn.text());
        assertTrue(drawn.text().contains("collar"), drawn.text());
    }

    @Test
    void withoutKnownFiguresNoPlaceIsMarked() {
        FitQuestion question = Shelf.question(Shelf.guide("8 Fr", ""), Shelf.burr());
        Drawn drawn = Drawn.of(DRAWING.ofPair(question, Shelf.answer(question).in(), Phase.IN, 160, 60));
        assertFalse(drawn.hasGroup("limiting"));
        assertTrue(drawn.text().contains("working lumen not stated"), drawn.text());
    }

    /** Papers of some devices tell next to nothing: a name and a kind, a lumen without any figure. */
    @Test
    void drawsEvenWhatNobodyDescribes() {
        Device bare = new DeviceMaker("bare", "Bare catheter", DeviceKind.OTHER, "").make();
        Device valve = new DeviceMaker("valve", "Valve", DeviceKind.HAEMOSTASIS_VALVE, "")
                .lumen("bore", Lumen.Use.WORKING, Lumen.Opening.HUB, 0, 0, "").make();
        Device port = new DeviceMaker("port", "Port only", DeviceKind.BALLOON_CATHETER, "")
                .lumen("wire", Lumen.Use.WIRE, Lumen.Opening.SIDE_PORT, 0, 250, "").make();
        for (Device device : List.of(bare, valve, port)) {
            assertTidy(draw(device, SIZES[0]));
            for (Device outer : List.of(valve, Shelf.extension())) {
                FitQuestion question = Shelf.question(outer, device);
                PhaseAnswer answer = Shelf.answer(question).in();
                assertTidy(DRAWING.ofPair(question, answer, Phase.IN, 120, 45));
                assertFalse(new CrossSectionDrawing(WORDS).ofPair(question, answer, Phase.IN, 110, 60).elements()
                        .isEmpty());
            }
        }
    }

    @Test
    void tellsInWordsWhatIsDrawnForThoseWhoCannotSeeIt() {
        assertTrue(draw(Shelf.burr(), SIZES[3]).description().contains("burr: 0.0 to 0.6 cm"),
                draw(Shelf.burr(), SIZES[3]).description());
        FitQuestion question = Shelf.question(Shelf.extension(), Shelf.burr());
        Picture picture = DRAWING.ofPair(question, Shelf.answer(question).in(), Phase.IN, 160, 60);
        assertTrue(picture.description().startsWith("Blocked by bench result"), picture.description());
    }

    @Test
    void afterUseABalloonIsDrawnThicker() {
        FitQuestion question = Shelf.question(Shelf.guide("6 Fr", "0.070 in"), Shelf.balloon("2.5", "0.82 mm"));
        FitAnswer answer = Shelf.answer(question);
        Box in = outline(Drawn.of(DRAWING.ofPair(question, answer.in(), Phase.IN, 160, 60)), "section:balloon");
        Box out = outline(Drawn.of(DRAWING.ofPair(question, answer.out(), Phase.OUT, 160, 60)), "section:balloon");
        assertEquals(1.15, out.heightMm() / in.heightMm(), 0.01);
    }

    private static FitQuestion crowded(Device inner, List<Occupant> inside, Optional<Through> through) {
        FitQuestion alone = Shelf.question(Shelf.guide("7 Fr", "0.081 in"), inner);
        return new FitQuestion(alone.outer(), alone.lumen(), alone.inner(), alone.direction(), alone.reach(),
                new Conditions(inside, through, List.of(), false), alone.rules());
    }

    private static Occupant occupant(Device device, double tipAhead) {
        return new Occupant(ReadDevice.of(device, Shelf.RULES), mm(tipAhead), false);
    }

    private static Through through(double protrusion) {
        Device extension = Shelf.extension();
        return new Through(ReadDevice.of(extension, Shelf.RULES), extension.mainLumen().orElseThrow(), mm(protrusion));
    }

    static Stream<FitQuestion> crowdedQuestions() {
        List<Occupant> one = List.of(occupant(Shelf.wire(), 120));
        List<Occupant> two = List.of(occupant(Shelf.wire(), 120), occupant(Shelf.balloon("2.0 x 12", "0.75 mm"), -30));
        return devices().flatMap(inner -> Stream.of(crowded(inner, one, Optional.empty()),
                crowded(inner, two, Optional.empty()), crowded(inner, List.of(), Optional.of(through(80))),
                crowded(inner, one, Optional.of(through(-20)))));
    }

    @ParameterizedTest
    @MethodSource("crowdedQuestions")
    void wordsKeepApartWhereOthersLieThereToo(FitQuestion question) {
        FitAnswer answer = Shelf.answer(question);
        for (double[] size : SIZES) {
            for (Phase phase : Phase.values()) {
                assertTidy(DRAWING.ofPair(question, answer.in(phase), phase, size[0], size[1]));
            }
        }
    }

    @Test
    void whatLiesThereAlreadyIsDrawnWhereItLies() {
        FitQuestion question = crowded(Shelf.microcatheter(), List.of(occupant(Shelf.wire(), 120)), Optional.empty());
        Picture picture = DRAWING.ofPair(question, Shelf.answer(question).in(), Phase.IN, 260, 110);
        Drawn drawn = Drawn.of(picture);
        assertTrue(drawn.hasGroup("occupant:wire"));
        assertTrue(drawn.text().contains("Filo wire 300"), drawn.text());
        assertTrue(picture.description().contains("beside \u201cFilo wire 300\u201d, its tip 120 mm beyond"),
                picture.description());
    }

    @Test
    void anExtensionIsDrawnWithItsTubeCollarAndRod() {
        FitQuestion question = crowded(Shelf.balloon("2.5 x 15", "0.82 mm"), List.of(), Optional.of(through(80)));
        Drawn drawn = Drawn.of(DRAWING.ofPair(question, Shelf.answer(question).in(), Phase.IN, 260, 110));
        for (String id : List.of("tube:extension", "rod:extension", "collar")) {
            assertTrue(drawn.hasGroup(id), id);
        }
        assertTrue(drawn.text().contains("push rod"), drawn.text());
        Box tube = outline(drawn, "tube:extension");
        Box rod = outline(drawn, "rod:extension");
        assertEquals(tube.xMm(), rod.rightMm(), 0.01, "the rod ends where the tube begins");
        assertEquals(0.067 * 25.4 / 0.6, tube.heightMm() / rod.heightMm(), 0.01);
    }
}
