/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.List;

/** One step of the outline of a {@link Path}. */
public sealed interface Segment {

    /** The places that it names, control points first. */
    List<Point> points();

    /** The same step at other places. */
    Segment transformed(Transform transform);

    /**
     * Begins a new part of the outline.
     *
     * @param to where it begins
     */
    record MoveTo(Point to) implements Segment {

        @Override
        public List<Point> points() {
            return List.of(to);
        }

        @Override
        public Segment transformed(Transform transform) {
            return new MoveTo(transform.apply(to));
        }
    }

    /**
     * A straight line from the place reached so far.
     *
     * @param to where it ends
     */
    record LineTo(Point to) implements Segment {

        @Override
        public List<Point> points() {
            return List.of(to);
        }

        @Override
        public Segment transformed(Transform transform) {
            return new LineTo(transform.apply(to));
        }
    }

    /**
     * A cubic Bezier curve from the place reached so far.
     *
     * @param control1 leaving towards this place
     * @param control2 arriving from this place
     * @param to where it ends
     */
    record CurveTo(Point control1, Point control2, Point to) implements Segment {

        @Override
        public List<Point> points() {
            return List.of(control1, control2, to);
        }

        @Override
        public Segment transformed(Transform transform) {
            return new CurveTo(transform.apply(control1), transform.apply(control2), transform.apply(to));
        }
    }

    /** A straight line back to where this part of the outline began. */
    record Close() implements Segment {

        @Override
        public List<Point> points() {
            return List.of();
        }

        @Override
        public Segment transformed(Transform transform) {
            return this;
        }
    }
}
