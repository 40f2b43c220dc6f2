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
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Against {@code shared/interference.csv}, each row with its source, and against parts drawn at random. */
class InterferenceTest {

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/interference.csv", numLinesToSkip = 1)
    void agreesWithTable(String id, double meanMm, String deviationsMm, BigDecimal probability) {
        double sdMm = Interference.combined(
                Arrays.stream(deviationsMm.split(" ")).mapToDouble(Double::parseDouble).toArray());
        double halfOfLastDigit = probability.ulp().doubleValue() / 2;
        assertEquals(probability.doubleValue(), Interference.probability(meanMm, sdMm), halfOfLastDigit * 1.01, id);
    }

    /** Guide 1.778, extension 1.70 over 1.43, device 1.40, all with 0.010 mm: as computed by another simulation. */
    @Test
    void agreesWithNestedPartsDrawnAtRandom() {
        Random random = new Random(20261125);
        int draws = 400_000;
        int clashes = 0;
        for (int i = 0; i < draws; i++) {
            double outer = 1.778 - 1.70 + 0.010 * (random.nextGaussian() - random.nextGaussian());
            double inner = 1.43 - 1.40 + 0.010 * (random.nextGaussian() - random.nextGaussian());
            clashes += outer < 0 || inner < 0 ? 1 : 0;
        }
        double sd = Interference.combined(0.010, 0.010);
        List<Double> chances = List.of(Interference.probability(0.078, sd), Interference.probability(0.03, sd));
        double independent = JointProbability.independent(chances);
        assertEquals(0.016947, independent, 0.0000005, "reference, computed");
        assertEquals(independent, (double) clashes / draws, 4 * Math.sqrt(independent / draws));
        JointProbability bounds = JointProbability.bounds(chances);
        assertTrue(bounds.low() <= independent && independent <= bounds.high());
    }

    @Test
    void boundsAreTheLargestAndTheSum() {
        assertEquals(new JointProbability(0.25, 0.5), JointProbability.bounds(List.of(0.125, 0.25, 0.125)));
        assertEquals(new JointProbability(0.75, 1), JointProbability.bounds(List.of(0.75, 0.5)));
        assertEquals(new JointProbability(0, 0), JointProbability.bounds(List.of()));
        assertEquals(new JointProbability(1, 1), JointProbability.bounds(List.of(0.0, 1.0)));
    }

    @Test
    void independentChancesAddUpUnlessTheyAreLarge() {
        assertEquals(0.4375, JointProbability.independent(List.of(0.25, 0.25)), 1e-15);
        assertEquals(2e-20, JointProbability.independent(List.of(1e-20, 1e-20)), 1e-30);
        assertEquals(1, JointProbability.independent(List.of(1.0, 0.5)));
    }

    @Test
    void partsWithoutSpreadInterfereOrNot() {
        assertEquals(1, Interference.probability(-0.001, 0));
        assertEquals(0, Interference.probability(0, 0));
        assertEquals(0.5, Interference.probability(0, 0.01));
        assertEquals(5, Interference.combined(3, 0, 4));
    }

    @ParameterizedTest
    @CsvSource({ "NaN, 1", "Infinity, 1", "1, -0.5", "1, NaN", "1, Infinity" })
    void refusesWhatIsNoDistribution(double meanMm, double sdMm) {
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> Interference.probability(meanMm, sdMm));
        assertTrue(refused.getMessage().contains(meanMm + " mm") && refused.getMessage().contains(sdMm + " mm"));
    }

    @Test
    void refusesDeviationsAndChancesOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> Interference.combined(0.1, -0.1));
        assertThrows(IllegalArgumentException.class, () -> Interference.combined(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> JointProbability.bounds(List.of(0.5, 1.5)));
        assertThrows(IllegalArgumentException.class, () -> JointProbability.bounds(List.of(-0.5)));
        assertThrows(IllegalArgumentException.class, () -> JointProbability.independent(List.of(Double.NaN)));
    }
}
