/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import java.util.List;

/**
 * An upright rectangle on the paper, used for layout, clipping and bounds.
 *
 * @param xMm left edge
 * @param yMm top edge
 * @param widthMm width, 0 or more
 * @param heightMm height, 0 or more
 */
public record Box(double xMm, double yMm, double widthMm, double heightMm) {

    public Box {
        Check.finite("x", xMm);
        Check.finite("y", yMm);
        Check.notNegative("width", widthMm);
        Check.notNegative("height", heightMm);
    }

    /** The smallest box that holds both corners, given in any order. */
    public static Box between(Point a, Point b) {
        double x = Math.min(a.xMm(), b.xMm());
        double y = Math.min(a.yMm(), b.yMm());
        return new Box(x, y, Math.max(a.xMm(), b.xMm()) - x, Math.max(a.yMm(), b.yMm()) - y);
    }

    /** The x of the right edge. */
    public double rightMm() {
        return xMm + widthMm;
    }

    /** The y of the bottom edge. */
    public double bottomMm() {
        return yMm + heightMm;
    }

    /** The corners, clockwise from the upper left. */
    public List<Point> corners() {
        return List.of(new Point(xMm, yMm), new Point(rightMm(), yMm),
                new Point(rightMm(), bottomMm()), new Point(xMm, bottomMm()));
    }

    /** The middle of the box. */
    public Point centre() {
        return new Point(xMm + widthMm / 2, yMm + heightMm / 2);
    }

    /**
     * This box made smaller by a margin on every side; a margin below 0 makes it larger.
     *
     * @throws IllegalArgumentException if the margins leave nothing
     */
    public Box inset(double marginMm) {
        return new Box(xMm + marginMm, yMm + marginMm, widthMm - 2 * marginMm, heightMm - 2 * marginMm);
    }

    /** The smallest box that holds this one and another. */
    public Box union(Box other) {
        return between(
                new Point(Math.min(xMm, other.xMm), Math.min(yMm, other.yMm)),
                new Point(Math.max(rightMm(), other.rightMm()), Math.max(bottomMm(), other.bottomMm())));
    }

    /** Whether a place lies in the box or on its edge. */
    public boolean contains(Point place) {
        return place.xMm() >= xMm && place.xMm() <= rightMm() && place.yMm() >= yMm && place.yMm() <= bottomMm();
    }
}
