/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import org.ferrule.quantity.Length;

/**
 * A disc where it lies in its enclosing circle.
 *
 * @param xMm the centre, to the right of the centre of the enclosing circle
 * @param yMm the centre, above the centre of the enclosing circle
 * @param diameter the diameter of the disc
 */
public record PlacedDisc(double xMm, double yMm, Length diameter) {

    /** Returns how far the disc reaches from the centre of the enclosing circle, in mm. */
    public double reachMm() {
        return Math.hypot(xMm, yMm) + diameter.mm() / 2;
    }

    /** Returns the gap to another disc in mm; negative where they overlap. */
    public double gapMm(PlacedDisc other) {
        return Math.hypot(xMm - other.xMm, yMm - other.yMm) - (diameter.mm() + other.diameter.mm()) / 2;
    }
}
