/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

/**
 * What a dimension describes, with the range in which such a figure is plausible. A figure outside the range is most
 * often in the wrong unit. The ranges are generous and from common practice; they warn and never refuse.
 */
public enum FigureKind {
    /** Inner diameter of a lumen, from a dual-lumen wire channel to a large sheath. */
    INNER_DIAMETER("0.2", "12"),
    /** Outer diameter or crossing profile of a shaft. */
    OUTER_DIAMETER("0.2", "14"),
    /** Diameter of a guidewire, 0.007 in to 0.045 in. */
    WIRE_DIAMETER("0.178", "1.143"),
    /** Diameter of an inflated balloon. */
    BALLOON_DIAMETER("0.5", "40"),
    /** Diameter of a deployed stent. */
    STENT_DIAMETER("1", "46"),
    /** Lumen diameter of a vessel, from a small branch to the ascending aorta. */
    VESSEL_DIAMETER("0.5", "50"),
    /** Length of a device or part. */
    LENGTH("0.1", "5000"),
    /** A place along a device. */
    STATION("0", "5000"),
    /** Radius of a bend. */
    RADIUS("1", "500"),
    /** A diametral clearance. */
    CLEARANCE("0", "5");

    private final Length least;
    private final Length most;

    FigureKind(String leastMm, String mostMm) {
        least = Length.of(leastMm, LengthUnit.MILLIMETRE);
        most = Length.of(mostMm, LengthUnit.MILLIMETRE);
    }

    /** Returns the least plausible length. */
    public Length least() {
        return least;
    }

    /** Returns the greatest plausible length. */
    public Length most() {
        return most;
    }

    /** Tells whether the length lies in the plausible range, ends included. */
    public boolean isPlausible(Length length) {
        return length.compareTo(least) >= 0 && length.compareTo(most) <= 0;
    }
}
