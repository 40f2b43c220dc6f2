/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.ArrayList;
import java.util.List;

/** One part of an outline with its curves broken into short straight lines. */
final class FlatOutline {

    private static final int LINES_PER_CURVE = 16;

    private final List<Point> points;

    /** An outline from point to point; closed if the last is the first. */
    FlatOutline(List<Point> points) {
        this.points = points;
    }

    /** The parts of a path. */
    static List<FlatOutline> partsOf(Path path) {
        List<FlatOutline> parts = new ArrayList<>();
        for (Segment segment : path.segments()) {
            if (segment instanceof Segment.MoveTo move) {
                parts.add(new FlatOutline(new ArrayList<>(List.of(move.to()))));
            } else {
                parts.get(parts.size() - 1).append(segment);
            }
        }
        return parts;
    }

    boolean isClosed() {
        return points.size() > 2 && points.get(0).equals(points.get(points.size() - 1));
    }

    /** Whether a place lies inside, by the even-odd rule; an open outline counts as closed by a straight line. */
    boolean contains(Point place) {
        boolean inside = false;
        Point before = points.get(points.size() - 1);
        for (Point point : points) {
            boolean spans = point.yMm() > place.yMm() != before.yMm() > place.yMm();
            if (spans && place.xMm() < crossingXMm(before, point, place.yMm())) {
                inside = !inside;
            }
            before = point;
        }
        return inside;
    }

    /** The distance from a place to the nearest of the lines. */
    double distanceMm(Point place) {
        double nearest = points.get(0).distanceMm(place);
        for (int i = 1; i < points.size(); i++) {
            nearest = Math.min(nearest, distanceMm(place, points.get(i - 1), points.get(i)));
        }
        return nearest;
    }

    private void append(Segment segment) {
        if (segment instanceof Segment.LineTo line) {
            points.add(line.to());
        } else if (segment instanceof Segment.CurveTo curve) {
            appendCurve(points.get(points.size() - 1), curve);
        } else {
            points.add(points.get(0));
        }
    }

    private void appendCurve(Point from, Segment.CurveTo curve) {
        for (int i = 1; i <= LINES_PER_CURVE; i++) {
            double t = (double) i / LINES_PER_CURVE;
            double u = 1 - t;
            double[] weights = { u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t };
            points.add(new Point(
                    weights[0] * from.xMm() + weights[1] * curve.control1().xMm() + weights[2] * curve.control2().xMm()
                            + weights[3] * curve.to().xMm(),
                    weights[0] * from.yMm() + weights[1] * curve.control1().yMm() + weights[2] * curve.control2().yMm()
                            + weights[3] * curve.to().yMm()));
        }
    }

    private static double crossingXMm(Point a, Point b, double yMm) {
        return a.xMm() + (yMm - a.yMm()) / (b.yMm() - a.yMm()) * (b.xMm() - a.xMm());
    }

    private static double distanceMm(Point place, Point a, Point b) {
        double dx = b.xMm() - a.xMm();
        double dy = b.yMm() - a.yMm();
        double square = dx * dx + dy * dy;
        double along = square == 0 ? 0
                : ((place.xMm() - a.xMm()) * dx + (place.yMm() - a.yMm()) * dy) / square;
        double clamped = Math.max(0, Math.min(1, along));
        return place.distanceMm(a.plus(clamped * dx, clamped * dy));
    }
}
