/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.mechanics;

/**
 * The cross-section of a round tube; of a rod where the inner diameter is zero.
 *
 * @param outerMm the outer diameter, above zero
 * @param innerMm the inner diameter, zero or more and below the outer one
 */
public record TubeSection(double outerMm, double innerMm) {
    /** Standard gravity, exactly. */
    private static final double GRAVITY_M_PER_S2 = 9.80665;
    private static final double KG_PER_M3_TO_KG_PER_MM3 = 1e-9;

    /**
     * Checks the diameters.
     *
     * @throws IllegalArgumentException naming the one that is out of range
     */
    public TubeSection {
        Check.positive("outer diameter in mm", outerMm);
        Check.require("inner diameter in mm", innerMm, innerMm >= 0 && innerMm < outerMm,
                "zero or more and below " + outerMm);
    }

    /** Returns a rod. */
    public static TubeSection rod(double outerMm) {
        return new TubeSection(outerMm, 0);
    }

    /** Returns the area of the material in mm2. */
    public double areaMm2() {
        return Math.PI / 4 * (outerMm - innerMm) * (outerMm + innerMm);
    }

    /** Returns the second moment of area about a diameter in mm4: pi (D^4 - d^4) / 64. */
    public double secondMomentMm4() {
        return Math.PI / 64 * (Math.pow(outerMm, 4) - Math.pow(innerMm, 4));
    }

    /**
     * Returns the bending stiffness EI in N mm2.
     *
     * @param modulusMPa Young's modulus, above zero; about 193000 of stainless steel
     * @throws IllegalArgumentException naming a modulus that is out of range
     */
    public double stiffnessNmm2(double modulusMPa) {
        return Check.positive("modulus in MPa", modulusMPa) * secondMomentMm4();
    }

    /**
     * Returns the weight of a length in N/mm.
     *
     * @param densityKgPerM3 the density, above zero; less that of the fluid around for the weight in it
     * @throws IllegalArgumentException naming a density that is out of range
     */
    public double weightNPerMm(double densityKgPerM3) {
        return Check.positive("density in kg/m3", densityKgPerM3) * KG_PER_M3_TO_KG_PER_MM3 * GRAVITY_M_PER_S2
                * areaMm2();
    }
}
