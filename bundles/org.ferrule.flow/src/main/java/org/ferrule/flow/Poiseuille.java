/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

/**
 * Laminar flow of a Newtonian fluid in an empty round tube, in SI units (law of Hagen and Poiseuille). For teaching: it
 * turns a viscosity and a flow into a pressure, and tells whether the assumption of laminar flow holds. Each
 * argument is positive and finite, a flow may be zero; anything else is an {@link IllegalArgumentException} that names
 * the argument and its value.
 */
public final class Poiseuille {
    /** Length until the profile is developed, in diameters for each unit of the Reynolds number; common practice. */
    private static final double ENTRANCE = 0.05;

    private Poiseuille() {
    }

    /** Returns the pressure drop in Pa: 128 mu L Q / (pi D^4). */
    public static double pressureDropPa(double viscosityPaS, double lengthM, double flowM3PerS, double diameterM) {
        return 128 * positive("viscosity", viscosityPaS) * positive("length", lengthM) * notNegative("flow", flowM3PerS)
                / (Math.PI * Math.pow(positive("diameter", diameterM), 4));
    }

    /** Returns the Reynolds number of the mean velocity: 4 rho Q / (pi mu D). Flow is laminar well below 2000. */
    public static double reynolds(double densityKgPerM3, double viscosityPaS, double flowM3PerS, double diameterM) {
        return 4 * positive("density", densityKgPerM3) * notNegative("flow", flowM3PerS)
                / (Math.PI * positive("viscosity", viscosityPaS) * positive("diameter", diameterM));
    }

    /** Returns after how many metres the flow is about developed: 0.05 Re D. */
    public static double entranceLengthM(double reynolds, double diameterM) {
        return ENTRANCE * notNegative("Reynolds number", reynolds) * positive("diameter", diameterM);
    }

    private static double positive(String name, double value) {
        if (value == 0) {
            throw new IllegalArgumentException(name + " must be positive: " + value);
        }
        return notNegative(name, value);
    }

    private static double notNegative(String name, double value) {
        if (value < 0 || !Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be finite and not negative: " + value);
        }
        return value;
    }
}
