/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * An upright ellipse or a circle.
 *
 * @param centre its middle
 * @param radiusXMm half its width, greater than 0
 * @param radiusYMm half its height, greater than 0
 * @param style how it is drawn
 */
public record Ellipse(Point centre, double radiusXMm, double radiusYMm, Style style) implements Element {

    public Ellipse {
        Check.positive("radius", radiusXMm);
        Check.positive("radius", radiusYMm);
    }

    /** A circle. */
    public static Ellipse circle(Point centre, double radiusMm, Style style) {
        return new Ellipse(centre, radiusMm, radiusMm, style);
    }
}
