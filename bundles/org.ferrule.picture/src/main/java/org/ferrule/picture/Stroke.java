/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/**
 * How a line is drawn.
 *
 * @param ink its colour
 * @param widthMm its width, greater than 0
 * @param dash its pattern
 * @param ends the look of its ends and corners
 */
public record Stroke(Ink ink, double widthMm, Dash dash, Ends ends) {

    /** The look of the ends and corners of a line. */
    public enum Ends {
        /** Cut off at the end point; corners are sharp. */
        FLAT,
        /** Rounded, half a line width beyond the end point; corners are rounded too. */
        ROUND
    }

    public Stroke {
        Check.positive("line width", widthMm);
    }

    /** A solid line with flat ends. */
    public static Stroke of(Ink ink, double widthMm) {
        return new Stroke(ink, widthMm, Dash.SOLID, Ends.FLAT);
    }

    /** This stroke with another pattern. */
    public Stroke dashed(Dash pattern) {
        return new Stroke(ink, widthMm, pattern, ends);
    }

    /** This stroke with rounded ends and corners. */
    public Stroke rounded() {
        return new Stroke(ink, widthMm, dash, Ends.ROUND);
    }
}
