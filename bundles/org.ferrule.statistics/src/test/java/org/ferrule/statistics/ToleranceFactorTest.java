/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One-sided against {@code shared/tolerance-factors.csv} (ISO 16269-6), two-sided against a printed table in
 * {@code shared/two-sided-tolerance-factors.csv}, to the last digit that stands there.
 */
class ToleranceFactorTest {

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/tolerance-factors.csv", numLinesToSkip = 1)
    void oneSidedAgreesWithTable(double confidence, double coverage, int n, BigDecimal factor) {
        assertToLastDigit(factor, ToleranceFactor.oneSided(n, confidence, coverage));
    }

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/two-sided-tolerance-factors.csv", numLinesToSkip = 1)
    void twoSidedAgreesWithTable(double confidence, double coverage, int n, BigDecimal factor) {
        assertToLastDigit(factor, ToleranceFactor.twoSided(n, confidence, coverage));
    }

    private static void assertToLastDigit(BigDecimal expected, double actual) {
        double halfOfLastDigit = expected.ulp().doubleValue() / 2;
        assertEquals(expected.doubleValue(), actual, halfOfLastDigit * 1.01);
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

    @Test
    void twoSidedFallsWithTheSampleTowardsTheQuantile() {
        double former = Double.POSITIVE_INFINITY;
        for (int n : new int[] { 2, 3, 5, 10, 100, 1000, 1_000_000 }) {
            double factor = ToleranceFactor.twoSided(n, 0.95, 0.95);
            assertTrue(factor < former, "n " + n);
            former = factor;
        }
        assertEquals(1.95996, former, 0.005, "z of 97.5 %");
    }

    /** Samples drawn at random hold the share as often as they should, within four standard deviations of the count. */
    @ParameterizedTest
    @CsvSource({ "3, 0.9, 0.8", "10, 0.95, 0.95" })
    void randomSamplesHoldTheShareAsOftenAsToldTwoSided(int n, double confidence, double coverage) {
        double k = ToleranceFactor.twoSided(n, confidence, coverage);
        Random random = new Random(20261125);
        int samples = 20_000;
        int good = 0;
        for (int i = 0; i < samples; i++) {
            double[] x = random.doubles(n).map(Normal::quantile).toArray();
            double mean = Arrays.stream(x).average().orElseThrow();
            double sd = Math.sqrt(Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum() / (n - 1));
            good += Normal.below(mean + k * sd) - Normal.below(mean - k * sd) >= coverage ? 1 : 0;
        }
        assertEquals(confidence, (double) good / samples, 4 * Math.sqrt(confidence * (1 - confidence) / samples));
    }

    @ParameterizedTest
    @CsvSource({ "1, 0.95, 0.95", "10, 0, 0.95", "10, 1, 0.95", "10, 0.95, 1", "10, 0.95, 0.49", "10, NaN, 0.95" })
    void refusesWhatHasNoFactor(int n, double confidence, double coverage) {
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> ToleranceFactor.oneSided(n, confidence, coverage));
        assertTrue(refused.getMessage().contains("n " + n) && refused.getMessage().contains("" + coverage));
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.twoSided(n, confidence, coverage));
    }
}
