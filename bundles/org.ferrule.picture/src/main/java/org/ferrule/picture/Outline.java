/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Builds the outline of a {@link Path} step by step:
 * {@code Outline.from(0, 0).lineTo(10, 0).arc(10, 5, 5, -90, 180).close()}.
 */
public final class Outline {

    private static final double LARGEST_ARC_DEGREES = 90;
    /** Below this distance two places are one. */
    private static final double SAME_PLACE_MM = 1e-9;

    private final List<Segment> segments = new ArrayList<>();

    private Outline() {
    }

    /** Begins an outline. */
    public static Outline from(double xMm, double yMm) {
        return new Outline().moveTo(xMm, yMm);
    }

    /** Begins another part of the outline. */
    public Outline moveTo(double xMm, double yMm) {
        segments.add(new Segment.MoveTo(new Point(xMm, yMm)));
        return this;
    }

    /** A straight line. */
    public Outline lineTo(double xMm, double yMm) {
        segments.add(new Segment.LineTo(new Point(xMm, yMm)));
        return this;
    }

    /** A cubic Bezier curve, leaving towards the first place, arriving from the second, ending at the third. */
    public Outline curveTo(double x1Mm, double y1Mm, double x2Mm, double y2Mm, double xMm, double yMm) {
        segments.add(new Segment.CurveTo(new Point(x1Mm, y1Mm), new Point(x2Mm, y2Mm), new Point(xMm, yMm)));
        return this;
    }

    /**
     * Part of a circle, joined to the place reached so far by a straight line if it begins elsewhere. It is drawn by
     * Bezier curves that leave the circle by less than 0.03 % of the radius.
     *
     * @param startDegrees where the arc begins: 0 is to the right of the centre, 90 below it
     * @param sweepDegrees how far it goes: positive is clockwise, at most 360 either way, not 0
     */
    public Outline arc(double centreXMm, double centreYMm, double radiusMm, double startDegrees, double sweepDegrees) {
        Check.positive("radius", radiusMm);
        if (!(Math.abs(sweepDegrees) <= 360) || sweepDegrees == 0) {
            throw new IllegalArgumentException("An arc must sweep up to 360 degrees, but sweeps " + sweepDegrees);
        }
        Point centre = new Point(centreXMm, centreYMm);
        Point start = onCircle(centre, radiusMm, Math.toRadians(startDegrees));
        if (!isAt(start)) {
            lineTo(start.xMm(), start.yMm());
        }
        int pieces = (int) Math.ceil(Math.abs(sweepDegrees) / LARGEST_ARC_DEGREES);
        double step = Math.toRadians(sweepDegrees / pieces);
        for (int i = 0; i < pieces; i++) {
            addArcPiece(centre, radiusMm, Math.toRadians(startDegrees) + i * step, step);
        }
        return this;
    }

    /** A straight line back to where this part began. */
    public Outline close() {
        segments.add(new Segment.Close());
        return this;
    }

    /** The outline as a path. */
    public Path path(Style style) {
        return new Path(segments, style);
    }

    private boolean isAt(Point place) {
        List<Point> last = segments.get(segments.size() - 1).points();
        return !last.isEmpty() && last.get(last.size() - 1).distanceMm(place) < SAME_PLACE_MM;
    }

    private void addArcPiece(Point centre, double radius, double from, double sweep) {
        double handle = radius * 4.0 / 3.0 * Math.tan(sweep / 4);
        Point start = onCircle(centre, radius, from);
        Point end = onCircle(centre, radius, from + sweep);
        segments.add(new Segment.CurveTo(
                start.plus(-handle * Math.sin(from), handle * Math.cos(from)),
                end.plus(handle * Math.sin(from + sweep), -handle * Math.cos(from + sweep)),
                end));
    }

    private static Point onCircle(Point centre, double radius, double angle) {
        return centre.plus(radius * Math.cos(angle), radius * Math.sin(angle));
    }
}
