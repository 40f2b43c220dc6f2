/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.fit.evidence.Chance;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.evidence.FlowLeft;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.LengthChain.Link;
import org.ferrule.fit.evidence.LengthChain.Part;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.fit.figure.Figure;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.geometry.Enclosure;
import org.ferrule.picture.Box;
import org.ferrule.picture.Ellipse;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Rect;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class EvidenceDrawingTest {
    private static final EvidenceDrawing DRAWING = new EvidenceDrawing(
            ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE).with(LengthUnit.INCH)));
    private static final double[][] SIZES = { { 79.4, 39.7 }, { 110, 60 }, { 70, 45 }, { 200, 120 } };

    static Stream<Evidence> evidence() {
        return Stream.of(kissing("0.070 in"), kissing("0.066 in"), bend("6 mm"), bend("9 mm"), vessel(),
                new FlowLeft("", mm("0.070 in"), List.of(mm("0.014 in")), 0.4257, 0.8069, true),
                new FlowLeft("main", mm("0.070 in"), List.of(mm("2.6 Fr"), mm("2.6 Fr"), mm("0.014 in")), 0.02, 0.07,
                        false),
                reach("8 cm"), reach("50 cm"), new Chance("balloon", "", 0.03, 0.01414, 0.016947, 0.016947),
                new Chance("hypotube of the second balloon", "main", -0.01, 0.004, 0.99, 1),
                new Chance("balloon", "", 0.5, 0.004, 0, 1e-9));
    }

    private static Length mm(String text) {
        return Dimension.parse(text).label();
    }

    private static SharedSection kissing(String lumen) {
        Enclosure around = EnclosingCircle.discs(mm("2.6 Fr"), mm("2.6 Fr"), mm("0.014 in"));
        List<SharedSection.Member> members = new ArrayList<>();
        members.add(member("second-balloon", SharedSection.Part.SHAFT, true, "2.6 Fr", around, 0));
        members.add(member("first-balloon", SharedSection.Part.SHAFT, false, "2.6 Fr", around, 1));
        members.add(member("first-balloon", SharedSection.Part.WIRE, false, "0.014 in", around, 2));
        return new SharedSection("main", mm("80 cm"), Figure.exactly(mm(lumen)), members, around.lowerDiameter(),
                around.upperDiameter());
    }

    private static SharedSection.Member member(String device, SharedSection.Part part, boolean moving, String size,
            Enclosure around, int body) {
        return new SharedSection.Member(device, part == SharedSection.Part.WIRE ? "" : "shaft", part, moving,
                Figure.exactly(mm(size)), body, false, around.discs().get(body));
    }

    /** Worked example: 1.25 mm in 1.45 mm at a radius of 30 mm passes up to 7 mm (computed). */
    private static BendRoom bend(String length) {
        return new BendRoom("burr", mm(length), mm("1.25 mm"), Optional.of(mm("1.45 mm")), mm("30 mm"), false,
                Optional.of(mm("7 mm")), Optional.of(mm("29 mm")));
    }

    private static BendRoom vessel() {
        return new BendRoom("stent", mm("28 mm"), mm("1.1 mm"), Optional.empty(), mm("15 mm"), true, Optional.empty(),
                Optional.of(mm("90 mm")));
    }

    /** Common practice: 142 cm less a guide of 100 cm and 8 cm of valve leave 34 cm. */
    private static LengthChain reach(String asked) {
        Length margin = mm("34 cm").minus(mm(asked));
        return new LengthChain(LengthChain.Question.REACH,
                List.of(new Link(Part.EFFECTIVE_LENGTH, "balloon-20-15", mm("142 cm")),
                        new Link(Part.LUMEN_LENGTH, "guide-6-100", mm("100 cm").negated()),
                        new Link(Part.HUB_AND_VALVE, "", mm("8 cm").negated()),
                        new Link(Part.REACH_ASKED, "", mm(asked).negated())),
                margin);
    }

    @ParameterizedTest
    @MethodSource("evidence")
    void wordsKeepApartAndOnThePaper(Evidence evidence) {
        for (double[] size : SIZES) {
            Picture picture = DRAWING.of(evidence, size[0], size[1]);
            Drawn drawn = Drawn.of(picture);
            String where = picture.title() + " " + size[0] + " x " + size[1];
            assertEquals(List.of(), drawn.overlaps(), where);
            assertEquals(List.of(), drawn.outside(picture.paper()), where);
            assertFalse(picture.description().isBlank(), where);
        }
    }

    /** Beside the other parts of an answer a picture may get no more than this. */
    @ParameterizedTest
    @ValueSource(strings = { "0.070 in", "0.066 in" })
    void wordsKeepApartInANarrowPicture(String lumen) {
        FlowLeft flow = new FlowLeft("main", mm(lumen), List.of(mm("2.6 Fr"), mm("2.6 Fr")), 0.065, 0.067, false);
        for (Evidence evidence : List.of(kissing(lumen), flow)) {
            Drawn drawn = Drawn.of(DRAWING.of(evidence, 42, 38));
            assertEquals(List.of(), drawn.overlaps(), drawn.text());
            assertEquals(List.of(), drawn.outside(new Box(0, 0, 42, 38)), drawn.text());
        }
    }

    private static Stream<Ellipse> circles(Picture picture, String group) {
        return Drawn.of(picture).groups().stream().filter(g -> g.id().equals(group))
                .flatMap(g -> g.group().elements().stream()).filter(Ellipse.class::isInstance)
                .map(Ellipse.class::cast);
    }

    @Test
    void discsOfASharedSectionAreToScaleAndInsideTheCircleTheyNeed() {
        Picture picture = DRAWING.of(kissing("0.070 in"), 110, 60);
        Ellipse around = circles(picture, "clearance").findFirst().orElseThrow();
        Ellipse moving = circles(picture, "body:second-balloon").findFirst().orElseThrow();
        assertEquals(around.radiusXMm() / 2, moving.radiusXMm(), 1e-6, "two equal discs need twice one");
        Stream.concat(circles(picture, "body:second-balloon"), circles(picture, "body:first-balloon"))
                .forEach(disc -> assertTrue(
                        around.centre().distanceMm(disc.centre()) + disc.radiusXMm() <= around.radiusXMm() + 1e-6));
    }

    @Test
    void rigidPartIsDrawnAsLongAsItIsBesideTheLumen() {
        Picture picture = DRAWING.of(bend("6 mm"), 110, 60);
        Rect rigid = Drawn.of(picture).groups().stream().filter(g -> g.id().equals("rigid"))
                .flatMap(g -> g.group().elements().stream()).map(Rect.class::cast).findFirst().orElseThrow();
        assertEquals(6 / 1.25, rigid.box().widthMm() / rigid.box().heightMm(), 1e-6);
    }

    @Test
    void barsOfAChainEndAtTheMargin() {
        Picture picture = DRAWING.of(reach("8 cm"), 110, 60);
        List<Rect> bars = Drawn.of(picture).groups().stream()
                .filter(g -> g.id().startsWith("link:") || g.id().equals("margin"))
                .flatMap(g -> g.group().elements().stream()).filter(Rect.class::isInstance).map(Rect.class::cast)
                .toList();
        assertEquals(5, bars.size());
        double whole = bars.get(0).box().widthMm();
        assertEquals(26.0 / 142, bars.get(4).box().widthMm() / whole, 1e-6);
        assertEquals(bars.get(4).box().rightMm(), bars.get(3).box().xMm(), 1e-6, "the last bar ends there");
    }
}
