/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Against {@code shared/tolerance-factors.csv} (ISO 16269-6), to the last digit that stands there. */
class ToleranceFactorTest {

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/tolerance-factors.csv", numLinesToSkip = 1)
    void agreesWithTable(double confidence, double coverage, int n, BigDecimal factor) {
        double halfOfLastDigit = factor.ulp().doubleValue() / 2;
        assertEquals(factor.doubleValue(), ToleranceFactor.oneSided(n, confidence, coverage), halfOfLastDigit * 1.01);
    }

    @Test
    void fallsWithTheSampleTowardsTheQuantile() {
        double former = Double.POSITIVE_INFINITY;
        for (int n : new int[] { 2, 3, 5, 10, 100, 1000, 1_000_000 }) {
            double factor = ToleranceFactor.oneSided(n, 0.95, 0.99);
            assertTrue(factor < former, "n " + n);
            former = factor;
        }
        assertEquals(2.3263, former, 0.01, "z of 99 %");
    }

    @ParameterizedTest
    @CsvSource({ "1, 0.95, 0.95", "10, 0, 0.95", "10, 1, 0.95", "10, 0.95, 1", "10, 0.95, 0.49", "10, NaN, 0.95" })
    void refusesWhatHasNoFactor(int n, double confidence, double coverage) {
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> ToleranceFactor.oneSided(n, confidence, coverage));
        assertTrue(refused.getMessage().contains("n " + n) && refused.getMessage().contains("" + coverage));
    }
}
