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

import java.util.List;
import org.ferrule.chart.Drawn;
import org.ferrule.fit.evidence.Chance;
import org.ferrule.fit.evidence.FlowLeft;
import org.ferrule.picture.Box;
import org.ferrule.picture.Line;
import org.ferrule.picture.Path;
import org.ferrule.picture.Point;
import org.ferrule.picture.Rect;
import org.junit.jupiter.api.Test;

/** Drawings of chances and of flows: shares on paper are those that they stand for. */
class ChanceAndFlowScalesTest {
    private static final double LEFT_MM = 2;
    private static final double RIGHT_MM = 108;

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
}
