/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import static org.ferrule.flow.Sections.circle;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The solver of a section. */
class MultipolesTest {
    private static final List<Circle> THREE = List.of(circle(0.02, 0.3, 0.1), circle(-0.5, 0, 0.47),
            circle(0.5, 0, 0.43));
    private static final double STEP = 1e-5;

    /** Twelve multipoles follow the exact annulus to nine digits, on the wall too. */
    @ParameterizedTest
    @ValueSource(doubles = { 0.01, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9 })
    void oneDiscIsAnAnnulus(double k) {
        for (double e = 0; e <= 1; e += 0.125) {
            double offset = e * (1 - k);
            Circle disc = circle(0.6 * offset, 0.8 * offset, k);
            assertEquals(Annulus.eccentric(k, e), new Multipoles(List.of(disc), 12).share(), 2e-9, k + " " + e);
        }
    }

    @Test
    void everyTermBringsTheShareDown() {
        double share = 1;
        for (int terms = 1; terms <= 40; terms++) {
            double next = new Multipoles(THREE, terms).share();
            assertTrue(next <= share, terms + " terms");
            share = next;
        }
        assertEquals(1, new Multipoles(THREE, 16).share() / share, 1e-5);
    }

    /** Where discs of very different size touch and leave thin gaps, the error is largest. */
    @ParameterizedTest
    @ValueSource(doubles = { 0.2, 0.1, 0.05, 0.02, 0.01 })
    void errorStaysBelowHalfAPerCent(double wire) {
        List<Circle> plugged = List.of(circle(wire, 0, 1 - wire), circle(wire - 1, 0, wire));
        assertEquals(1, new Multipoles(plugged, 32).share() / new Multipoles(plugged, 160).share(), 0.005);
    }

    @Test
    void gradientTellsWhatAStepBrings() {
        Multipoles flow = new Multipoles(THREE, 24);
        assertEquals(slope(0, new Complex(STEP, 0)), flow.gradient(0).re(), 1e-6);
        assertEquals(slope(0, new Complex(0, STEP)), flow.gradient(0).im(), 1e-6);
        assertEquals(slope(1, new Complex(0, STEP)), flow.gradient(1).im(), 1e-6);
        assertEquals(slope(2, new Complex(0, STEP)), flow.gradient(2).im(), 1e-6);
    }

    private static double slope(int disc, Complex step) {
        return (share(disc, step) - share(disc, step.times(-1))) / (2 * STEP);
    }

    private static double share(int disc, Complex step) {
        List<Circle> moved = new ArrayList<>(THREE);
        moved.set(disc, moved.get(disc).moved(step));
        return new Multipoles(moved, 24).share();
    }
}
