/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ShapeTest {

    private static final Style STYLE = Style.of(Stroke.of(Ink.TEXT, 0.1));

    /** A quarter circle by one cubic curve leaves the circle by 0.0273 % of the radius at most (from memory). */
    @Test
    void circleOutlineStaysOnTheCircle() {
        Point centre = new Point(30, 40);
        FlatOutline flat = FlatOutline.partsOf(Ellipse.circle(centre, 10, STYLE).outline()).get(0);
        for (double degrees = 0; degrees < 360; degrees += 22.5) {
            double angle = Math.toRadians(degrees);
            Point onCircle = centre.plus(10 * Math.cos(angle), 10 * Math.sin(angle));
            assertEquals(0, flat.distanceMm(onCircle), 10 * 0.000273 + 0.002, "at " + degrees);
        }
        assertTrue(flat.isClosed());
    }

    @Test
    void stadiumOutlineHasItsWidthAndHeight() {
        Rect stadium = new Rect(new Box(2, 3, 20, 10), 5, STYLE);
        assertBox(new Box(2, 3, 20, 10), stadium.outline().bounds());
        assertEquals(0, FlatOutline.partsOf(stadium.outline()).get(0).distanceMm(new Point(22, 8)), 1e-9);
    }

    @Test
    void arcGoesClockwiseAsSeen() {
        List<Segment> segments = Outline.from(10, 0).arc(0, 0, 10, 0, 90).path(STYLE).segments();
        Point end = ((Segment.CurveTo) segments.get(segments.size() - 1)).to();
        assertEquals(0, end.distanceMm(new Point(0, 10)), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({ "360, 4", "-360, 4", "90, 1", "91, 2", "-10, 1" })
    void arcUsesOneCurvePerQuarter(double sweep, int curves) {
        List<Segment> segments = Outline.from(10, 0).arc(0, 0, 10, 0, sweep).path(STYLE).segments();
        assertEquals(curves, segments.stream().filter(Segment.CurveTo.class::isInstance).count());
    }

    @Test
    void transformsComposeInReadingOrder() {
        Frame frame = Frame.PLAIN.scaled(2, 3).rotated(90).translated(100, 0);
        Point moved = frame.transform().apply(new Point(1, 1));
        assertEquals(0, moved.distanceMm(new Point(97, 2)), 1e-9);
        assertEquals(0, frame.transform().inverse().apply(moved).distanceMm(new Point(1, 1)), 1e-9);
        assertEquals(Math.sqrt(6), frame.transform().scale(), 1e-12);
    }

    @Test
    void arcIsJoinedByALineWhereItBeginsElsewhere() {
        List<Segment> joined = Outline.from(0, 0).arc(0, 0, 10, 90, 90).path(STYLE).segments();
        Point begin = ((Segment.LineTo) joined.get(1)).to();
        assertEquals(0, begin.distanceMm(new Point(0, 10)), 1e-9);
        assertEquals(3, joined.size());
        assertEquals(2, Outline.from(0, 10).arc(0, 0, 10, 90, 90).path(STYLE).segments().size());
    }

    /** Three points are the least that enclose anything. */
    @Test
    void outlineThereAndBackIsClosed() {
        assertTrue(new FlatOutline(List.of(new Point(0, 0), new Point(1, 0), new Point(0, 0))).isClosed());
        assertFalse(new FlatOutline(List.of(new Point(0, 0), new Point(0, 0))).isClosed());
        assertFalse(new FlatOutline(List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1))).isClosed());
    }

    /** Of each kind in an area of six by three spacings: level, upright, both; turned ones cover the turned area. */
    @ParameterizedTest
    @CsvSource({ "HORIZONTAL, 3", "VERTICAL, 6", "GRID, 9", "DOTS, 3" })
    void hatchHasAMarkInEveryTile(Hatch.Pattern pattern, int marks) {
        Hatch hatch = new Hatch(pattern, Ink.TEXT, 2, 0.5);
        assertEquals(marks, hatch.over(new Box(0.001, 0.001, 11.99, 5.99)).elements().size());
    }

    /** Dots are dashes of next to no length, with round ends, from the first to the last middle of a tile. */
    @Test
    void dotsRunFromTheFirstToTheLastTile() {
        Line row = (Line) new Hatch(Hatch.Pattern.DOTS, Ink.TEXT, 2, 0.5).over(new Box(0, 0, 6, 2)).elements().get(0);
        assertEquals(new Point(1, 1), row.from());
        assertEquals(5, row.to().xMm(), 0.01);
        assertTrue(row.to().xMm() > 5, "else the last dot is missing");
        assertEquals(2, row.stroke().dash().lengthsMm().stream().mapToDouble(Double::doubleValue).sum(), 1e-12);
        assertEquals(0.4, Hatch.of(Hatch.Pattern.DOTS, Ink.TEXT).widthMm());
        assertEquals(0.2, Hatch.of(Hatch.Pattern.GRID, Ink.TEXT).widthMm());
    }

    @ParameterizedTest
    @EnumSource
    void hatchLeavesNoPlaceOfAnAreaFartherThanASpacingFromAMark(Hatch.Pattern pattern) {
        Hatch hatch = Hatch.of(pattern, Ink.TEXT);
        Box area = new Box(-7.3, 11.9, 9, 5);
        Group marks = hatch.over(area);
        for (Point corner : area.corners()) {
            double nearest = marks.elements().stream().mapToDouble(mark -> distance(marks, mark, corner)).min()
                    .orElseThrow();
            assertTrue(nearest <= hatch.spacingMm(), pattern + " at " + corner + ": " + nearest);
        }
    }

    @Test
    void hatchOfOneKindRunsOnThroughNeighbouringAreas() {
        Hatch hatch = Hatch.of(Hatch.Pattern.HORIZONTAL, Ink.TEXT);
        assertEquals(0.6, ((Line) hatch.tile().get(0)).from().yMm(), 1e-12);
        assertEquals(12.6, ((Line) hatch.over(new Box(0, 12, 5, 1.2)).elements().get(0)).from().yMm(), 1e-12);
        assertEquals(1, hatch.tile().size());
    }

    private static double distance(Group marks, Element mark, Point place) {
        Point inside = marks.frame().transform().inverse().apply(place);
        Path path = mark instanceof Line line ? Path.polyline(List.of(line.from(), line.to()), STYLE)
                : ((Shape) mark).outline();
        return FlatOutline.partsOf(path).get(0).distanceMm(inside);
    }

    private static void assertBox(Box expected, Box actual) {
        assertEquals(expected.xMm(), actual.xMm(), 1e-9);
        assertEquals(expected.yMm(), actual.yMm(), 1e-9);
        assertEquals(expected.widthMm(), actual.widthMm(), 1e-9);
        assertEquals(expected.heightMm(), actual.heightMm(), 1e-9);
    }
}
