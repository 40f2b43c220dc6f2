/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * A place on the paper.
 *
 * @param xMm millimetres from the left edge, to the right
 * @param yMm millimetres from the top edge, down
 */
public record Point(double xMm, double yMm) {

    public Point {
        Check.finite("x", xMm);
        Check.finite("y", yMm);
    }

    /** The place that lies {@code dxMm} to the right of and {@code dyMm} below this one. */
    public Point plus(double dxMm, double dyMm) {
        return new Point(xMm + dxMm, yMm + dyMm);
    }

    /** The distance to another place, in millimetres. */
    public double distanceMm(Point other) {
        return Math.hypot(other.xMm - xMm, other.yMm - yMm);
    }
}
