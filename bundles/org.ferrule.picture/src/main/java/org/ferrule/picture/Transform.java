/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * How the coordinates of a group lie in those around it: x' = a x + c y + e, y' = b x + d y + f. The letters are
 * those of SVG and PDF matrices.
 *
 * @param a x scale
 * @param b y skew
 * @param c x skew
 * @param d y scale
 * @param eMm shift to the right
 * @param fMm shift down
 */
public record Transform(double a, double b, double c, double d, double eMm, double fMm) {

    /** Coordinates as they are. */
    public static final Transform IDENTITY = new Transform(1, 0, 0, 1, 0, 0);

    public Transform {
        double determinant = a * d - b * c;
        if (!Double.isFinite(determinant + eMm + fMm) || determinant == 0) {
            throw new IllegalArgumentException("Not a transformation that can be undone: "
                    + a + " " + b + " " + c + " " + d + " " + eMm + " " + fMm);
        }
    }

    /** A shift. */
    public static Transform translation(double dxMm, double dyMm) {
        return new Transform(1, 0, 0, 1, dxMm, dyMm);
    }

    /** A change of size about the origin; a negative factor mirrors, 0 is refused. */
    public static Transform scaling(double factorX, double factorY) {
        return new Transform(factorX, 0, 0, factorY, 0, 0);
    }

    /** A turn about the origin, positive is clockwise. */
    public static Transform rotation(double degrees) {
        double angle = Math.toRadians(degrees);
        return new Transform(Math.cos(angle), Math.sin(angle), -Math.sin(angle), Math.cos(angle), 0, 0);
    }

    /** The transformation that does this one first and then the other. */
    public Transform then(Transform o) {
        return new Transform(
                o.a * a + o.c * b, o.b * a + o.d * b, o.a * c + o.c * d, o.b * c + o.d * d,
                o.a * eMm + o.c * fMm + o.eMm, o.b * eMm + o.d * fMm + o.fMm);
    }

    /** Where a place inside lies outside. */
    public Point apply(Point inside) {
        return new Point(a * inside.xMm() + c * inside.yMm() + eMm, b * inside.xMm() + d * inside.yMm() + fMm);
    }

    /** By how much lengths grow, on average over all directions: the square root of how much areas grow. */
    public double scale() {
        return Math.sqrt(Math.abs(a * d - b * c));
    }

    /** The way back: where a place outside lies inside. */
    public Transform inverse() {
        double determinant = a * d - b * c;
        return new Transform(d / determinant, -b / determinant, -c / determinant, a / determinant,
                (c * fMm - d * eMm) / determinant, (b * eMm - a * fMm) / determinant);
    }
}
