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
public record Rect(Box box, double cornerRadiusMm, Style style) implements Element {

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
}
