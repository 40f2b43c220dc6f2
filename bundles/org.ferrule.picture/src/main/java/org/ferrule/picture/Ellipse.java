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
public record Ellipse(Point centre, double radiusXMm, double radiusYMm, Style style) implements Shape {

    public Ellipse {
        Check.positive("radius", radiusXMm);
        Check.positive("radius", radiusYMm);
    }

    /** A circle. */
    public static Ellipse circle(Point centre, double radiusMm, Style style) {
        return new Ellipse(centre, radiusMm, radiusMm, style);
    }

    @Override
    public <E extends Exception> void paintOn(Painter<E> painter) throws E {
        painter.ellipse(this);
    }

    @Override
    public Box bounds() {
        return new Box(centre.xMm() - radiusXMm, centre.yMm() - radiusYMm, 2 * radiusXMm, 2 * radiusYMm);
    }

    @Override
    public Path outline() {
        Transform fromUnitCircle = Transform.scaling(radiusXMm, radiusYMm)
                .then(Transform.translation(centre.xMm(), centre.yMm()));
        return Outline.from(1, 0).arc(0, 0, 1, 0, 360).close().path(style).transformed(fromUnitCircle);
    }
}
