/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/** One step of the outline of a {@link Path}. */
public sealed interface Segment {

    /**
     * Begins a new part of the outline.
     *
     * @param to where it begins
     */
    record MoveTo(Point to) implements Segment {
    }

    /**
     * A straight line from the place reached so far.
     *
     * @param to where it ends
     */
    record LineTo(Point to) implements Segment {
    }

    /**
     * A cubic Bezier curve from the place reached so far.
     *
     * @param control1 leaving towards this place
     * @param control2 arriving from this place
     * @param to where it ends
     */
    record CurveTo(Point control1, Point control2, Point to) implements Segment {
    }

    /** A straight line back to where this part of the outline began. */
    record Close() implements Segment {
    }
}
