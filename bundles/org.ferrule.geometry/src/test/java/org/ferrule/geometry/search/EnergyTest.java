/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The energy of an arrangement and its slope. */
class EnergyTest {
    private static final Shape DISC = Shape.disc(0.5);
    private static final Shape BAR = new Shape(new double[] { -0.6, 0.6 }, new double[2], new double[] { 0.3, 0.3 },
            true);
    private static final Shape SET = new Shape(new double[] { 0, 1.1 }, new double[] { 0.2, 0 },
            new double[] { 0.3, 0.4 }, false);

    @Test
    void gradientIsTheSlope() {
        Parts parts = new Parts(List.of(DISC, BAR, SET, BAR, DISC));
        Energy energy = new Energy(parts);
        energy.soften(0.2);
        energy.keepApart(0.01);
        Random random = new Random(1);
        for (int i = 0; i < 300; i++) {
            double[] variables = random.doubles(parts.variables, -1, 1).toArray();
            variables[parts.variables - 1] = 1.5;
            if (i % 3 == 2) {
                energy.shift(variables.clone());
                energy.harden(0.5);
            }
            assertSlopes(energy, variables);
        }
    }

    private static void assertSlopes(Energy energy, double[] variables) {
        double step = 1e-6;
        double[] gradient = new double[variables.length];
        double[] ignored = new double[variables.length];
        energy.at(variables, gradient);
        for (int k = 0; k < variables.length; k++) {
            double[] moved = variables.clone();
            moved[k] += step;
            double above = energy.at(moved, ignored);
            moved[k] -= 2 * step;
            double below = energy.at(moved, ignored);
            assertEquals((above - below) / (2 * step), gradient[k], 2e-5, "variable " + k);
        }
    }

    @Test
    void fixedBodiesAndTheRadiusHaveNoSlope() {
        Parts parts = new Parts(List.of(DISC, DISC));
        Energy energy = new Energy(parts);
        energy.fix(2);
        double[] gradient = new double[5];
        double value = energy.at(new double[] { 0, 0, 0.4, 0, 1 }, gradient);
        assertEquals(0.18, value, 1e-12);
        assertEquals(-0.6, gradient[2], 1e-12);
        assertEquals(0, gradient[0] + gradient[1] + gradient[3] + gradient[4]);
    }

    @Test
    void shiftsForetellTheRadius() {
        // Two discs of radius 1 in line: the radius is 2. At a minimum each overlap equals the weight.
        Parts parts = new Parts(List.of(Shape.disc(1), Shape.disc(1)));
        Energy energy = new Energy(parts);
        energy.soften(0.1);
        double[] minimum = { -0.975, 0, 0.975, 0, 1.925 };
        double[] gradient = new double[5];
        energy.at(minimum, gradient);
        for (double slope : gradient) {
            assertEquals(0, slope, 1e-12);
        }
        assertEquals(1.925 + (0.0025 + 2 * 0.0025) / 0.1, energy.shift(minimum), 1e-12);
        assertEquals(1.975, energy.radius(minimum), 1e-12);
        assertEquals(0.05, energy.overlap(minimum), 1e-12);
    }

    @Test
    void barsThatCrossAreFarthestFromApart() {
        Parts parts = new Parts(List.of(BAR, BAR));
        Energy energy = new Energy(parts);
        double[] crossed = { 0, 0, 0, 0.5, 0, Math.PI / 2, 2 };
        assertEquals(0.7, energy.overlap(crossed), 1e-12);
        double[] apart = { 0, 0, 0, 1.3, 0, Math.PI / 2, 2 };
        assertTrue(energy.overlap(apart) < 0);
    }
}
