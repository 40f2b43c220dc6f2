/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.look.DrawingInks;
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
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.geometry.Stadium;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Ellipse;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Line;
import org.ferrule.picture.Path;
import org.ferrule.picture.Point;
import org.ferrule.picture.Rect;
import org.ferrule.picture.Segment;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** Drawings of evidence: lengths on paper are those of what they stand for, in one scale. */
class EvidenceScalesTest {
    private static final EvidenceDrawing DRAWING = new EvidenceDrawing(
            ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE)));
    private static final double LEFT_MM = 2;
    private static final double RIGHT_MM = 108;

    private static Drawn draw(Evidence evidence) {
        return Drawn.of(DRAWING.of(evidence, 110, 60));
    }

    private static Length mm(String text) {
        return Dimension.parse(text).label();
    }

    private static <T> List<T> marks(Drawn drawn, String group, Class<T> kind) {
        return drawn.marks(group).stream().map(Drawn.Mark::element).filter(kind::isInstance).map(kind::cast).toList();
    }

    /** Where a path begins and where it ends. */
    private static List<Point> ends(Path path) {
        List<Segment> segments = path.segments();
        return List.of(segments.get(0).points().get(0),
                segments.get(segments.size() - 1).points().get(segments.get(segments.size() - 1).points().size() - 1));
    }

    /** 1.25 mm in a free lumen of 1.45 mm at a radius of 30 mm, of which 7 mm pass (computed). */
    private static BendRoom bend(String length) {
        return new BendRoom("burr", mm(length), mm("1.25 mm"), Optional.of(mm("1.45 mm")), mm("30 mm"), false,
                Optional.of(mm("7 mm")), Optional.of(mm("29 mm")));
    }

    @Test
    void wallsOfABendAreArcsAboutOneCentreAndTheRigidPartLiesOnTheInnerOne() {
        Drawn drawn = draw(bend("6 mm"));
        Box rigid = marks(drawn, "rigid", Rect.class).get(0).box();
        double scale = rigid.widthMm() / 6;
        assertEquals(1.25 * scale, rigid.heightMm(), 1e-9);
        double centreY = rigid.bottomMm() + (30 - 1.45 / 2) * scale;
        List<Path> walls = marks(drawn, "bend", Path.class).stream().filter(p -> p.style().stroke().isPresent())
                .toList();
        double[] radii = { 30 + 1.45 / 2, 30 - 1.45 / 2 };
        for (int i = 0; i < 2; i++) {
            for (Point end : ends(walls.get(i))) {
                double out = Math.hypot(end.xMm() - rigid.centre().xMm(), end.yMm() - centreY);
                assertEquals(radii[i] * scale, out, 1e-6);
                // A quarter more than half the rigid part, seen from the centre of the bend.
                assertEquals(1.25 * 3 / 30, Math.abs(end.xMm() - rigid.centre().xMm()) / out, 1e-6);
            }
            assertEquals(rigid.centre().xMm(), (ends(walls.get(i)).get(0).xMm() + ends(walls.get(i)).get(1).xMm()) / 2,
                    1e-6);
        }
        assertEquals((RIGHT_MM - LEFT_MM) * 0.62, 2 * 1.25 * 3 * scale, 1e-6, "as wide as the room beside the words");
    }

    @Test
    void theOutlineOfARigidPartTellsWhetherItPasses() {
        assertEquals(DrawingInks.SHAFT_LINE, outline(bend("6 mm")));
        assertEquals(DrawingInks.SHAFT_LINE, outline(bend("7 mm")));
        assertEquals(DrawingInks.LIMIT, outline(bend("7.1 mm")));
        assertEquals(DrawingInks.SHAFT_LINE, outline(vessel()));
    }

    private static Ink outline(BendRoom bend) {
        return marks(draw(bend), "rigid", Rect.class).get(0).style().stroke().orElseThrow().ink();
    }

    private static BendRoom vessel() {
        return new BendRoom("stent", mm("28 mm"), mm("1.1 mm"), Optional.empty(), mm("15 mm"), true, Optional.empty(),
                Optional.of(mm("90 mm")));
    }

    @Test
    void ofAVesselOnlyItsMiddleIsDrawnAndTheRigidPartLiesAcrossIt() {
        Drawn drawn = draw(vessel());
        List<Path> arcs = marks(drawn, "bend", Path.class);
        assertEquals(1, arcs.size());
        assertFalse(arcs.get(0).style().stroke().orElseThrow().dash().equals(Dash.SOLID));
        Box rigid = marks(drawn, "rigid", Rect.class).get(0).box();
        double scale = rigid.widthMm() / 28;
        double centreY = rigid.centre().yMm() + 15 * scale;
        ends(arcs.get(0)).forEach(end -> assertEquals(15 * scale,
                Math.hypot(end.xMm() - rigid.centre().xMm(), end.yMm() - centreY), 1e-6));
        assertTrue(drawn.text().contains("the vessel must straighten to a radius of 9.0 cm"), drawn.text());
    }

    private static LengthChain chain(String... lengths) {
        Length sum = Length.ZERO;
        List<Link> links = new ArrayList<>();
        for (String length : lengths) {
            Length part = length.startsWith("-") ? mm(length.substring(1)).negated() : mm(length);
            links.add(new Link(Part.EFFECTIVE_LENGTH, "", part));
            sum = sum.plus(part);
        }
        return new LengthChain(LengthChain.Question.REACH, links, sum);
    }

    @Test
    void everyLinkOfAChainBeginsWhereTheOneBeforeEnds() {
        Drawn drawn = draw(chain("142 cm", "-100 cm", "-8 cm", "-50 cm"));
        double[] sums = { 0, 142, 42, 34, -16 };
        double scale = marks(drawn, "link:0", Rect.class).get(0).box().widthMm() / 142;
        double zero = marks(drawn, "link:0", Rect.class).get(0).box().xMm();
        for (int i = 0; i < 4; i++) {
            Box bar = marks(drawn, "link:" + i, Rect.class).get(0).box();
            assertEquals(zero + Math.min(sums[i], sums[i + 1]) * scale, bar.xMm(), 1e-9, "link " + i);
            assertEquals(zero + Math.max(sums[i], sums[i + 1]) * scale, bar.rightMm(), 1e-9, "link " + i);
            assertTrue(i == 0 || bar.yMm() > marks(drawn, "link:" + (i - 1), Rect.class).get(0).box().bottomMm());
        }
        Box margin = marks(drawn, "margin", Rect.class).get(0).box();
        assertEquals(zero, margin.rightMm(), 1e-9);
        assertEquals(16 * scale, margin.widthMm(), 1e-9);
        // Names stand left of all bars, numbers have 17 mm right of them.
        assertEquals(LEFT_MM + (RIGHT_MM - LEFT_MM) * 0.42, margin.xMm(), 1e-9);
        assertEquals(RIGHT_MM - 17, zero + 142 * scale, 1e-9);
    }

    @Test
    void aChainThatIsTooShortSaysSoAndIsMarked() {
        Drawn shorter = draw(chain("10 cm", "-12 cm"));
        assertTrue(shorter.text().contains("too short") && shorter.text().contains("\u22122.0 cm"), shorter.text());
        assertEquals(DrawingInks.LIMIT, marks(shorter, "margin", Rect.class).get(0).style().fill().ground()
                .orElseThrow());
        Drawn longer = draw(chain("10 cm", "-8 cm"));
        assertTrue(longer.text().contains("left over") && longer.text().contains("+2.0 cm"), longer.text());
        assertEquals(DrawingInks.WIRE, marks(longer, "margin", Rect.class).get(0).style().fill().ground()
                .orElseThrow());
    }

    /** From four deviations below the mean to four above. */
    @Test
    void theCurveOfAChanceHasItsTopAtTheMeanAndTheOverlapsUnderItLeftOfZero() {
        Drawn drawn = draw(new Chance("balloon", "", 0.03, 0.0125, 0.0082, 0.0082));
        List<Path> paths = marks(drawn, "curve", Path.class);
        List<Point> line = paths.get(1).segments().stream().map(s -> s.points().get(0)).toList();
        assertEquals(LEFT_MM + 2, line.get(0).xMm(), 1e-9);
        assertEquals(RIGHT_MM - 2, line.get(line.size() - 1).xMm(), 1e-9);
        Point top = line.stream().min((a, b) -> Double.compare(a.yMm(), b.yMm())).orElseThrow();
        assertEquals(55, top.xMm(), 0.5);
        double zero = LEFT_MM + 2 + 102 * 0.02 / 0.1;
        Box overlaps = paths.get(0).bounds();
        assertEquals(LEFT_MM + 2, overlaps.xMm(), 1e-9);
        assertEquals(zero, overlaps.rightMm(), 1e-9);
        List<Line> lines = marks(drawn, "", Line.class);
        assertEquals(zero, lines.get(0).from().xMm(), 1e-9);
        assertEquals(zero, drawn.words("0").box().centre().xMm(), 1e-9);
        assertEquals(55, drawn.words("0.030 mm").box().centre().xMm(), 1e-9);
        // 2.4 deviations from the mean the density is exp(-2.88) of its largest value.
        double base = lines.get(0).to().yMm();
        assertEquals(Math.exp(-2.88), (base - overlaps.yMm()) / (base - top.yMm()), 0.01);
    }

    @Test
    void aMeanBesideZeroHasNoNumberOfItsOwn() {
        Drawn drawn = draw(new Chance("balloon", "", 0.003, 0.0125, 0.4, 0.4));
        assertFalse(drawn.text().contains("0.003 mm"), drawn.text());
    }

    @Test
    void chancesAreToldAsSharesOrBetweenTwo() {
        assertTrue(draw(new Chance("balloon", "", 0.03, 0.0125, 0.0082, 0.0082)).text().contains("0.82 % of pairs"));
        assertTrue(draw(new Chance("balloon", "", -0.01, 0.004, 0.99, 1)).text()
                .contains("99.00 % \u2013 100.00 % of pairs"));
        assertTrue(
                draw(new Chance("balloon", "", 0.5, 0.004, 0, 1e-9)).text().contains("0 % \u2013 1.0e-07 % of pairs"));
        assertTrue(draw(new Chance("balloon", "", 0.5, 0.004, 0.0001, 0.0001)).text().contains("0.01 % of pairs"));
    }

    @Test
    void theBarOfAFlowIsFilledToBothEndsWithLinesThere() {
        Drawn drawn = draw(new FlowLeft("", mm("0.070 in"), List.of(mm("0.014 in")), 0.4257, 0.8069, true));
        Box bar = marks(drawn, "", Rect.class).get(0).box();
        List<Rect> open = marks(drawn, "open", Rect.class);
        assertEquals(0.8069 * bar.widthMm(), open.get(0).box().widthMm(), 1e-9);
        assertEquals(0.4257 * bar.widthMm(), open.get(1).box().widthMm(), 1e-9);
        List<Line> ends = marks(drawn, "open", Line.class);
        double[] shares = { 0.4257, 0.8069 };
        for (int i = 0; i < 2; i++) {
            assertEquals(bar.xMm(), open.get(i).box().xMm(), 1e-9);
            assertEquals(bar.xMm() + shares[i] * bar.widthMm(), ends.get(i).from().xMm(), 1e-9);
            assertEquals(ends.get(i).from().xMm(), ends.get(i).to().xMm(), 1e-9);
            assertEquals(bar.yMm() - 1, ends.get(i).from().yMm(), 1e-9);
            assertEquals(bar.bottomMm() + 1, ends.get(i).to().yMm(), 1e-9);
        }
        for (int tick : new int[] { 0, 25, 50, 75, 100 }) {
            double x = bar.xMm() + tick / 100.0 * bar.widthMm();
            assertEquals(x, drawn.words(tick + " %").box().centre().xMm(), 1e-9);
            assertTrue(drawn.words(tick + " %").box().yMm() > bar.bottomMm() + 1.8, "below its tick");
            assertTrue(marks(drawn, "", Line.class).stream().anyMatch(l -> Math.abs(l.from().xMm() - x) < 1e-9
                    && l.from().yMm() > bar.bottomMm() && l.to().yMm() > l.from().yMm()), tick + " %");
        }
        Box between = drawn.words("43 % \u2013 81 %").box();
        assertEquals(bar.xMm() + (0.4257 + 0.8069) / 2 * bar.widthMm(), between.centre().xMm(), 1e-9);
        assertTrue(between.bottomMm() < bar.yMm());
    }

    @Test
    void sharesBelowATenthHaveADecimalAndANarrowBarFewerTicks() {
        FlowLeft flow = new FlowLeft("main", mm("0.070 in"), List.of(mm("2.6 Fr")), 0.0999, 0.1, false);
        assertTrue(draw(flow).text().contains("10.0 % \u2013 10 %"), draw(flow).text());
        Drawn narrow = Drawn.of(DRAWING.of(flow, 42, 38));
        assertFalse(narrow.text().contains("25 %"), narrow.text());
        assertTrue(narrow.text().contains("50 %"), narrow.text());
    }

    private static SharedSection.Member end(Enclosure around, int disc, String size, boolean filled) {
        return new SharedSection.Member(filled ? "oval" : "wire", "shaft",
                filled ? SharedSection.Part.SHAFT : SharedSection.Part.WIRE, filled, Figure.exactly(mm(size)), 0,
                filled, around.discs().get(disc));
    }

    /** An oval of 2 x 1 mm on which a wire of 0.6 mm lifts itself: 0.6 + 1 + 1/2.4. */
    @Test
    void ovalsAndDiscsOfASharedSectionLieWhereTheyAreInOneScale() {
        Enclosure around = new Stadium(mm("2 mm"), mm("1 mm")).with(mm("0.6 mm"));
        SharedSection section = new SharedSection("main", mm("80 cm"), Figure.exactly(mm("3 mm")),
                List.of(end(around, 0, "1 mm", true), end(around, 1, "1 mm", true), end(around, 2, "0.6 mm", false)),
                around.lowerDiameter(), around.upperDiameter());
        Drawn drawn = draw(section);
        Ellipse lumen = marks(drawn, "lumen", Ellipse.class).get(3);
        double scale = lumen.radiusXMm() / 1.5;
        Ellipse together = marks(drawn, "clearance", Ellipse.class).get(0);
        assertEquals(around.upperDiameter().mm() / 2 * scale, together.radiusXMm(), 1e-9);
        Ellipse wire = marks(drawn, "body:wire", Ellipse.class).get(0);
        assertEquals(0.3 * scale, wire.radiusXMm(), 1e-9);
        assertEquals(lumen.centre().xMm(), wire.centre().xMm(), 1e-9);
        Path oval = marks(drawn, "body:oval", Path.class).get(0);
        double floor = oval.segments().stream().flatMap(s -> s.points().stream()).mapToDouble(Point::yMm).max()
                .orElseThrow();
        double top = oval.segments().stream().flatMap(s -> s.points().stream()).mapToDouble(Point::yMm).min()
                .orElseThrow();
        assertEquals(scale, floor - top, 1e-6, "1 mm high");
        assertEquals(top, wire.centre().yMm() + wire.radiusXMm(), 1e-6, "the wire lies on it");
        assertEquals(2 * scale, oval.bounds().widthMm(), 0.05 * scale, "2 mm wide");
        assertEquals(lumen.centre().xMm(), oval.bounds().centre().xMm(), 1e-6);
        assertEquals(110 * 0.48 - 3.6, 3 * scale, 12, "the lumen fills its square");
    }

    /** The same lying askew: its ends 3 and 4 parts of 5 to the right of each other and above. */
    @Test
    void anOvalMayLieAskew() {
        List<PlacedDisc> ends = List.of(new PlacedDisc(-0.3, -0.4, mm("1 mm")), new PlacedDisc(0.3, 0.4, mm("1 mm")));
        Enclosure around = new Enclosure(mm("2 mm"), mm("2 mm"), ends);
        Drawn drawn = draw(new SharedSection("main", mm("80 cm"), Figure.exactly(mm("3 mm")),
                List.of(end(around, 0, "1 mm", true), end(around, 1, "1 mm", true)), mm("2 mm"), mm("2 mm")));
        double scale = marks(drawn, "lumen", Ellipse.class).get(3).radiusXMm() / 1.5;
        Point middle = marks(drawn, "lumen", Ellipse.class).get(3).centre();
        Path oval = marks(drawn, "body:oval", Path.class).get(0);
        List<Point> along = oval.segments().stream().filter(s -> !s.points().isEmpty())
                .map(s -> s.points().get(s.points().size() - 1)).toList();
        double farthest = along.stream().mapToDouble(p -> p.distanceMm(middle)).max().orElseThrow();
        assertEquals(scale, farthest, 0.01 * scale, "half of 2 mm from its middle");
        Point tip = along.stream().max((a, b) -> Double.compare(a.distanceMm(middle), b.distanceMm(middle)))
                .orElseThrow();
        assertEquals(-4.0 / 3, (tip.yMm() - middle.yMm()) / (tip.xMm() - middle.xMm()), 0.05, "up to the right");
        for (Point point : along) {
            double aside = Math.abs((point.xMm() - middle.xMm()) * 0.8 + (point.yMm() - middle.yMm()) * 0.6);
            assertTrue(aside <= 0.5 * scale + 1e-6, "half a millimetre on each side");
        }
    }

    @Test
    void labelsOfASharedSectionStandInTheOrderOfTheirPlaces() {
        Enclosure around = new Stadium(mm("2 mm"), mm("1 mm")).with(mm("0.6 mm"));
        Drawn drawn = draw(new SharedSection("main", mm("80 cm"), Figure.exactly(mm("3 mm")),
                List.of(end(around, 0, "1 mm", true), end(around, 1, "1 mm", true), end(around, 2, "0.6 mm", false)),
                around.lowerDiameter(), around.upperDiameter()));
        List<Line> leaders = marks(drawn, "", Line.class);
        for (int i = 2; i < leaders.size(); i += 2) {
            assertTrue(leaders.get(i).from().yMm() >= leaders.get(i - 2).from().yMm(), "leaders do not cross");
            assertTrue(leaders.get(i).to().yMm() > leaders.get(i - 2).to().yMm(), "leaders do not cross");
            assertEquals(leaders.get(i).to(), leaders.get(i + 1).from());
            assertEquals(leaders.get(i + 1).from().yMm(), leaders.get(i + 1).to().yMm(), 1e-9);
        }
    }

    @Test
    void everyKindOfEvidenceHasATitleOfItsOwn() {
        List<Evidence> all = List.of(bend("6 mm"), chain("10 cm"),
                new FlowLeft("", mm("0.070 in"), List.of(), 0.4, 0.8, true), new Chance("balloon", "", 1, 1, 0, 0));
        List<String> titles = all.stream().map(DRAWING::title).toList();
        assertEquals(List.of("Rigid part in the bend", "How far it reaches", "Flow left", "Chance of an overlap"),
                titles);
        for (Evidence evidence : all) {
            assertEquals(DRAWING.title(evidence), DRAWING.of(evidence, 110, 60).title());
            assertTrue(draw(evidence).text().contains(DRAWING.title(evidence)));
        }
        assertEquals(all.size(), titles.stream().collect(Collectors.toCollection(HashSet::new)).size());
    }
}
