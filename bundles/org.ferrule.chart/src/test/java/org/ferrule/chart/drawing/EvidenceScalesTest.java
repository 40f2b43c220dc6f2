/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.ferrule.chart.drawing.EvidencePaper.DRAWING;
import static org.ferrule.chart.drawing.EvidencePaper.draw;
import static org.ferrule.chart.drawing.EvidencePaper.marks;
import static org.ferrule.chart.drawing.EvidencePaper.mm;
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
import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.fit.evidence.Chance;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.evidence.FlowLeft;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.LengthChain.Link;
import org.ferrule.fit.evidence.LengthChain.Part;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Path;
import org.ferrule.picture.Point;
import org.ferrule.picture.Rect;
import org.ferrule.picture.Segment;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** Drawings of bends and chains: lengths on paper are those of what they stand for, in one scale. */
class EvidenceScalesTest {
    private static final double LEFT_MM = 2;
    private static final double RIGHT_MM = 108;

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
