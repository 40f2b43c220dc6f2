/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A free outline of straight lines and curves, open or closed, in one or several parts. Areas inside are told by the
 * even-odd rule, so a part inside another is a hole.
 *
 * @param segments the steps; the first, and every one after a {@link Segment.Close}, is a {@link Segment.MoveTo}
 * @param style how it is drawn; an open part is filled as if it were closed
 */
public record Path(List<Segment> segments, Style style) implements Shape {

    public Path {
        segments = List.copyOf(segments);
        boolean open = false;
        for (Segment segment : segments) {
            if (!open && !(segment instanceof Segment.MoveTo)) {
                throw new IllegalArgumentException("A part of a path must begin with MoveTo, not with " + segment);
            }
            open = !(segment instanceof Segment.Close);
        }
        if (segments.size() < 2) {
            throw new IllegalArgumentException("A path needs at least two segments, but has " + segments);
        }
    }

    /** Straight lines from point to point; two points or more. */
    public static Path polyline(List<Point> points, Style style) {
        return new Path(straight(points), style);
    }

    /** Straight lines from point to point and back to the first; two points or more. */
    public static Path polygon(List<Point> points, Style style) {
        List<Segment> segments = straight(points);
        segments.add(new Segment.Close());
        return new Path(segments, style);
    }

    /** The same outline at other places. */
    public Path transformed(Transform transform) {
        return new Path(segments.stream().map(segment -> segment.transformed(transform)).toList(), style);
    }

    @Override
    public <E extends Exception> void paintOn(Painter<E> painter) throws E {
        painter.path(this);
    }

    @Override
    public Path outline() {
        return this;
    }

    /** {@inheritDoc} Curves lie within their control points, so it may be a little larger than needed. */
    @Override
    public Box bounds() {
        Stream<Point> points = segments.stream().flatMap(segment -> segment.points().stream());
        return points.map(point -> Box.between(point, point)).reduce(Box::union).orElseThrow();
    }

    private static List<Segment> straight(List<Point> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("At least two points are needed, but there are " + points);
        }
        List<Segment> segments = new ArrayList<>();
        segments.add(new Segment.MoveTo(points.get(0)));
        points.stream().skip(1).map(Segment.LineTo::new).forEach(segments::add);
        return segments;
    }
}
