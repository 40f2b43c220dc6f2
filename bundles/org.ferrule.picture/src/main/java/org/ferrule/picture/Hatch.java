/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * A pattern of lines or dots over an area, so that areas are told apart without colour. Hatches of one pattern and
 * spacing run on through neighbouring areas: they start at the origin of the coordinates in which they are drawn.
 *
 * @param pattern which lines
 * @param ink their colour
 * @param spacingMm the distance from line to line, measured across them, or from dot to dot; greater than 0
 * @param widthMm the width of a line or diameter of a dot; greater than 0 and less than the spacing
 */
public record Hatch(Pattern pattern, Ink ink, double spacingMm, double widthMm) {

    /** What a hatch is made of. */
    public enum Pattern {
        /** Level lines. */
        HORIZONTAL,
        /** Upright lines. */
        VERTICAL,
        /** Level and upright lines. */
        GRID,
        /** Lines rising to the right at 45 degrees. */
        RISING,
        /** Lines falling to the right at 45 degrees. */
        FALLING,
        /** Rising and falling lines. */
        LATTICE,
        /** Dots on a square grid. */
        DOTS
    }

    public Hatch {
        Check.positive("hatch spacing", spacingMm);
        Check.positive("hatch width", widthMm);
        if (widthMm >= spacingMm) {
            throw new IllegalArgumentException(
                "A hatch of width " + widthMm + " mm at a spacing of " + spacingMm + " mm is solid");
        }
    }

    /** A hatch that reads well on paper: lines of 0.2 mm (dots of 0.4 mm) every 1.2 mm. */
    public static Hatch of(Pattern pattern, Ink ink) {
        return new Hatch(pattern, ink, 1.2, pattern == Pattern.DOTS ? 0.4 : 0.2);
    }
}
