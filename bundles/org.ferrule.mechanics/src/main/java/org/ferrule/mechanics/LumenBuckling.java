/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.mechanics;

/**
 * A slender shaft that is pushed through a lumen wider than itself and buckles into a wave and then into a helix along
 * the wall. Friction is left out, the lumen is round and does not yield. Formulas: straight inclined lumen, Dawson and
 * Paslay, J Pet Technol 1984(10):1734-1738; helix, Chen, Lin and Cheatham 1990 and Lubinski 1962; curved lumen, He and
 * Kyllingstad 1995 (the formulas from memory).
 *
 * @param stiffnessNmm2 the shaft's bending stiffness EI, above zero
 * @param radialClearanceMm half of lumen less shaft, above zero
 */
public record LumenBuckling(double stiffnessNmm2, double radialClearanceMm) {
    private static final double HELICAL_TO_SINUSOIDAL_STRAIGHT = Math.sqrt(2);
    private static final double HELICAL_TO_SINUSOIDAL_CURVED = 2;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException naming the one that is out of range
     */
    public LumenBuckling {
        Check.positive("stiffness in N mm2", stiffnessNmm2);
        Check.positive("radial clearance in mm", radialClearanceMm);
    }

    /**
     * Returns the force, in N, at which the shaft begins to snake on the floor of a straight lumen:
     * 2 sqrt(EI w sin(angle) / r).
     *
     * @param weightNPerMm the shaft's weight per length in the fluid, above zero
     * @param fromVerticalRad the angle between lumen and vertical, above 0 to pi/2
     * @throws IllegalArgumentException naming a figure that is out of range
     */
    public double sinusoidalInStraightN(double weightNPerMm, double fromVerticalRad) {
        Check.positive("weight in N/mm", weightNPerMm);
        Check.require("angle in rad", fromVerticalRad, fromVerticalRad > 0 && fromVerticalRad <= Math.PI / 2,
                "above 0, to pi/2");
        return 2 * Math.sqrt(stiffnessNmm2 * weightNPerMm * Math.sin(fromVerticalRad) / radialClearanceMm);
    }

    /** Returns the force, in N, at which it winds up into a helix there: sqrt(2) times as much. */
    public double helicalInStraightN(double weightNPerMm, double fromVerticalRad) {
        return HELICAL_TO_SINUSOIDAL_STRAIGHT * sinusoidalInStraightN(weightNPerMm, fromVerticalRad);
    }

    /**
     * Returns the force, in N, at which the shaft begins to snake in a bend: 4 EI / (R r).
     *
     * @param bendRadiusMm the centreline's radius R, above zero
     * @throws IllegalArgumentException naming a radius that is out of range
     */
    public double sinusoidalInBendN(double bendRadiusMm) {
        return 4 * stiffnessNmm2 / (Check.positive("radius in mm", bendRadiusMm) * radialClearanceMm);
    }

    /** Returns the force, in N, at which it winds up into a helix there: twice as much. */
    public double helicalInBendN(double bendRadiusMm) {
        return HELICAL_TO_SINUSOIDAL_CURVED * sinusoidalInBendN(bendRadiusMm);
    }

    /**
     * Returns the length of one turn of the helix in mm: 2 pi sqrt(2 EI / F).
     *
     * @param forceN the pushing force, above zero
     * @throws IllegalArgumentException naming a force that is out of range
     */
    public double helixPitchMm(double forceN) {
        return 2 * Math.PI * Math.sqrt(2 * stiffnessNmm2 / Check.positive("force in N", forceN));
    }

    /**
     * Returns the force of the helix against the wall in N/mm: r F^2 / (4 EI).
     *
     * @param forceN the pushing force, zero or more
     * @throws IllegalArgumentException naming a force that is out of range
     */
    public double wallForceNPerMm(double forceN) {
        Check.notNegative("force in N", forceN);
        return radialClearanceMm * forceN * forceN / (4 * stiffnessNmm2);
    }
}
