/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * An upright rectangle, with rounded corners if wished. With the largest corner radius it is a stadium.
 *
 * @param box where it lies
 * @param cornerRadiusMm 0 for sharp corners; at most half the shorter side
 * @param style how it is drawn
 */
public record Rect(Box box, double cornerRadiusMm, Style style) implements Shape {

    /** Room for the rounding of a radius that was computed as half a side. */
    private static final double ROUNDING_MM = 1e-9;

    public Rect {
        Check.notNegative("corner radius", cornerRadiusMm);
        double largest = Math.min(box.widthMm(), box.heightMm()) / 2;
        if (cornerRadiusMm > largest + ROUNDING_MM) {
            throw new IllegalArgumentException("A corner radius of " + cornerRadiusMm
                    + " mm is more than half of the shorter side, " + largest + " mm");
        }
    }

    @Override
    public <E extends Exception> void paintOn(Painter<E> painter) throws E {
        painter.rect(this);
    }

    @Override
    public Box bounds() {
        return box;
    }

    @Override
    public Path outline() {
        return cornerRadiusMm > 0 ? roundOutline().path(style) : Path.polygon(box.corners(), style);
    }

    private Outline roundOutline() {
        double r = cornerRadiusMm;
        double left = box.xMm() + r;
        double right = box.rightMm() - r;
        double top = box.yMm() + r;
        double bottom = box.bottomMm() - r;
        return Outline.from(left, box.yMm())
                .arc(right, top, r, -90, 90).arc(right, bottom, r, 0, 90)
                .arc(left, bottom, r, 90, 90).arc(left, top, r, 180, 90).close();
    }
}
