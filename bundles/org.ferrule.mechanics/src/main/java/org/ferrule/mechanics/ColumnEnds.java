/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.mechanics;

/** How the ends of a column are held, with the length of the pinned column that buckles as easily (Euler). */
public enum ColumnEnds {
    /** Both ends turn freely. */
    PINNED(1),
    /** Both ends are clamped. */
    FIXED(0.5),
    /** One end is clamped, the other is free, as a wire's tip is ahead of everything. */
    FIXED_AND_FREE(2);

    private final double lengthFactor;

    ColumnEnds(double lengthFactor) {
        this.lengthFactor = lengthFactor;
    }

    /** Returns the factor K by which the length counts. */
    public double lengthFactor() {
        return lengthFactor;
    }

    /**
     * Returns the force at which a straight, slender, elastic column without support buckles: pi^2 EI / (KL)^2, in N.
     * A short thick one yields before.
     *
     * @param stiffnessNmm2 the bending stiffness EI, above zero
     * @param lengthMm the free length, above zero
     * @throws IllegalArgumentException naming a figure that is out of range
     */
    public double bucklingForceN(double stiffnessNmm2, double lengthMm) {
        double length = lengthFactor * Check.positive("length in mm", lengthMm);
        return Math.PI * Math.PI * Check.positive("stiffness in N mm2", stiffnessNmm2) / (length * length);
    }
}
