/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import static org.ferrule.chart.drawing.EvidencePaper.draw;
import static org.ferrule.chart.drawing.EvidencePaper.marks;
import static org.ferrule.chart.drawing.EvidencePaper.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ferrule.chart.Drawn;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.fit.figure.Figure;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.geometry.Stadium;
import org.ferrule.picture.Ellipse;
import org.ferrule.picture.Line;
import org.ferrule.picture.Path;
import org.ferrule.picture.Point;
import org.junit.jupiter.api.Test;

/** Drawings of what lies side by side: bodies to scale, each where it lies. */
class SharedScalesTest {
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
}
