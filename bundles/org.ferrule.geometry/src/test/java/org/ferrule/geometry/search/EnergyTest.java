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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
    void softeningDropsTheShifts() {
        Parts parts = new Parts(List.of(Shape.disc(1), Shape.disc(1)));
        Energy energy = new Energy(parts);
        energy.soften(0.1);
        double[] variables = { -0.9, 0.1, 0.9, 0.2, 1.8 };
        double fresh = energy.at(variables, new double[5]);
        energy.shift(variables);
        assertTrue(energy.at(variables, new double[5]) > fresh);
        energy.soften(0.1);
        assertEquals(fresh, energy.at(variables, new double[5]));
    }

    @Test
    void hardeningLowersWeightAndShiftsAlike() {
        Parts parts = new Parts(List.of(Shape.disc(1), Shape.disc(1)));
        Energy energy = new Energy(parts);
        energy.soften(0.1);
        // Overlaps of 0.05 at the rim, twice, and between the discs, which become the shifts.
        double[] variables = { -0.975, 0, 0.975, 0, 1.925 };
        energy.shift(variables);
        energy.harden(0.1);
        assertEquals(0.01 * 1.925 + 3 * 0.055 * 0.055 / 2, energy.at(variables, new double[5]), 1e-12);
        assertEquals(1.925 + 3 * 0.055 * 0.05 / 0.01, energy.shift(variables), 1e-12);
    }

    @Test
    void gapCountsAsOverlap() {
        Parts parts = new Parts(List.of(Shape.disc(1), Shape.disc(1)));
        Energy energy = new Energy(parts);
        energy.soften(0.1);
        energy.keepApart(0.02);
        double[] touching = { -1, 0, 1, 0, 2.5 };
        assertEquals(0.25 + 0.0002, energy.at(touching, new double[5]), 1e-12);
        assertEquals(2.5 + 0.0004 / 0.1, energy.shift(touching), 1e-12);
    }

    @Test
    void everyQuestionIsAboutItsOwnPlaces() {
        Parts parts = new Parts(List.of(Shape.disc(1), Shape.disc(0.5)));
        Energy energy = new Energy(parts);
        energy.soften(1);
        double[] far = { 3, 0, -4, 0, 9 };
        double[] near = { 0, 0, 0, 1, 1.5 };
        assertEquals(4.5, energy.radius(far), 1e-12);
        assertEquals(1.5, energy.radius(near), 1e-12);
        assertEquals(-5.5, energy.overlap(far), 1e-12);
        assertEquals(0.5, energy.overlap(near), 1e-12);
        assertEquals(9, energy.shift(far), 1e-12);
        assertEquals(1.75, energy.shift(near), 1e-12);
    }

    // The bars reach 0.6 from their middles and are 0.3 thick. The way back of the end that has gone through least counts.
    @ParameterizedTest
    @CsvSource({ "0, 0.5, 90, 0.7", "0.55, 0.1, 90, 0.65", "-0.5, -0.1, 90, 0.7", "0.1, -0.55, 90, 0.65",
        "0, 1.21, 90, -0.01", "1.1, 0, 90, 0.1", "0, 0.7, 0, -0.1", "0, 0.5, 0, 0.1", "1.1, 0, 0, 0.6",
        "0, 0.3, 30, 0.6" })
    void barsThatCrossOverlapByTheWayBack(double x, double y, double degrees, double overlap) {
        Energy energy = new Energy(new Parts(List.of(BAR, BAR)));
        double turn = Math.toRadians(degrees);
        double[] variables = { 0, 0, 0, x, y, turn, 2 };
        assertEquals(overlap, energy.overlap(variables), 1e-9);
        double[] reversed = { x + 1, y + 2, turn, 1, 2, Math.PI, 2 };
        assertEquals(overlap, energy.overlap(reversed), 1e-9);
    }
}
