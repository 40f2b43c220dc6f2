/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

import org.ferrule.chart.DeviceMaker;
import org.ferrule.chart.Drawn;
import org.ferrule.chart.Shelf;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.picture.Box;
import org.ferrule.picture.Ellipse;
import org.ferrule.picture.Line;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** Drawings of a device in a lumen, along and across: all in one scale, everything where it lies. */
class PairScalesTest {
    private static final ReasonWords WORDS = ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final LongitudinalDrawing DRAWING = new LongitudinalDrawing(WORDS);
    private static final Device BALLOON = Shelf.balloon("2.5", "0.82 mm");

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
