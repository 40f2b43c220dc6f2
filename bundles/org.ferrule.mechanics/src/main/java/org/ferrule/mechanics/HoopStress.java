/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.mechanics;

/**
 * Stress and tension in the wall of a tube or a balloon under inner pressure, along the circumference. For balloons and
 * tubes of which the wall was measured; never for a vessel.
 */
public final class HoopStress {

    private HoopStress() {
    }

    /**
     * Returns the stress in a thin wall in MPa: p r / t. Within 5 % while the wall is below a tenth of the radius.
     *
     * @param pressureMPa the inner pressure above the outer one, zero or more
     * @param radiusMm the radius, above zero
     * @param wallMm the thickness of the wall, above zero
     * @throws IllegalArgumentException naming a figure that is out of range
     */
    public static double thinMPa(double pressureMPa, double radiusMm, double wallMm) {
        return tensionNPerMm(pressureMPa, radiusMm) / Check.positive("wall in mm", wallMm);
    }

    /**
     * Returns the largest stress in a thick wall, which is at its inside, in MPa:
     * p (ro^2 + ri^2) / (ro^2 - ri^2) (Lame).
     *
     * @param pressureMPa the inner pressure above the outer one, zero or more
     * @param innerRadiusMm the inner radius, above zero
     * @param wallMm the thickness of the wall, above zero
     * @throws IllegalArgumentException naming a figure that is out of range
     */
    public static double thickMPa(double pressureMPa, double innerRadiusMm, double wallMm) {
        Check.notNegative("pressure in MPa", pressureMPa);
        double inner = Check.positive("radius in mm", innerRadiusMm);
        double outer = inner + Check.positive("wall in mm", wallMm);
        return pressureMPa * (outer * outer + inner * inner) / (wallMm * (outer + inner));
    }

    /**
     * Returns the tension of the wall per length in N/mm: p r (Young and Laplace, for a cylinder).
     *
     * @param pressureMPa the inner pressure above the outer one, zero or more
     * @param radiusMm the radius, above zero
     * @throws IllegalArgumentException naming a figure that is out of range
     */
    public static double tensionNPerMm(double pressureMPa, double radiusMm) {
        return Check.notNegative("pressure in MPa", pressureMPa) * Check.positive("radius in mm", radiusMm);
    }
}
