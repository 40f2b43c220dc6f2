/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One round device in a lumen. */
class AnnulusTest {

    @ParameterizedTest
    @ValueSource(doubles = { 0.01, 0.2, 0.36, 0.37, 0.5, 0.9 })
    void concentricFollowsTheTextbook(double k) {
        double expected = 1 - Math.pow(k, 4) - Math.pow(1 - k * k, 2) / Math.log(1 / k);
        assertEquals(expected, Annulus.concentric(k), 1e-14);
    }

    /** In a thin gap of width w the share is 4/3 w^3 (1 - w/2 ...), the flow between two plates. */
    @ParameterizedTest
    @ValueSource(doubles = { 1e-2, 1e-4, 1e-8 })
    void thinGapKeepsItsDigits(double gap) {
        double plates = 4 * Math.pow(gap, 3) / 3 * (1 - gap / 2);
        assertEquals(1, Annulus.concentric(1 - gap) / plates, gap * gap + 1e-7);
        assertEquals(2.5, Annulus.eccentric(1 - gap, 1) / plates, gap * gap + 1e-7);
    }

    /** The series as printed, summed until its terms vanish. */
    @ParameterizedTest
    @CsvSource({ "0.02, 0.5", "0.2, 0.01", "0.2, 0.5", "0.2, 0.99", "0.5, 0.3", "0.5, 0.999", "0.8, 0.7", "0.95, 0.9" })
    void eccentricFollowsTheSeries(double k, double e) {
        assertEquals(Harmonics.share(k, e), Annulus.eccentric(k, e), 1e-11);
    }

    /** psi'(1 / (1 - k)) is pi^2/6 less a few terms where 1 / (1 - k) is whole. */
    @ParameterizedTest
    @CsvSource({ "0.5, 2", "0.75, 4", "0.9, 10", "0.96, 25" })
    void wallContactFollowsTheTrigammaFunction(double k, int whole) {
        double trigamma = Math.PI * Math.PI / 6;
        for (int n = 1; n < whole; n++) {
            trigamma -= 1. / n / n;
        }
        assertEquals(1 - Math.pow(k, 4) - 4 * k * k * trigamma, Annulus.eccentric(k, 1), 1e-14);
    }

    @ParameterizedTest
    @ValueSource(doubles = { 0.05, 0.2, 0.5, 0.8, 0.95 })
    void meetsTheCentreAndTheWall(double k) {
        assertEquals(Annulus.concentric(k), Annulus.eccentric(k, 1e-7), 1e-12);
        assertEquals(Annulus.eccentric(k, 1), Annulus.eccentric(k, 1 - 1e-12), 1e-11);
    }

    @Test
    void nothingBlocksNothingAndAPlugBlocksAll() {
        assertEquals(1, Annulus.concentric(0));
        assertEquals(1, Annulus.eccentric(0, 0.7));
        assertEquals(0, Annulus.concentric(1));
        assertEquals(0, Annulus.eccentric(1, 1));
    }

    @Test
    void hairInTheCentreStillHinders() {
        assertEquals(1 - 1 / Math.log(1e9), Annulus.concentric(1e-9), 1e-12);
    }

    @Test
    void growsTowardsTheWallAndFallsWithThickness() {
        for (double k = 0.05; k < 1; k += 0.05) {
            for (double e = 0; e < 0.95; e += 0.1) {
                assertTrue(Annulus.eccentric(k, e) < Annulus.eccentric(k, e + 0.1), k + " " + e);
                assertTrue(Annulus.eccentric(k, e) < Annulus.eccentric(k - 0.05, e), k + " " + e);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = { -0.1, 1.1, Double.NaN })
    void refusesWhatIsNoShare(double wrong) {
        assertEquals("ratio must be within 0 to 1: " + wrong,
                assertThrows(IllegalArgumentException.class, () -> Annulus.concentric(wrong)).getMessage());
        assertEquals("eccentricity must be within 0 to 1: " + wrong,
                assertThrows(IllegalArgumentException.class, () -> Annulus.eccentric(0.5, wrong)).getMessage());
    }
}
