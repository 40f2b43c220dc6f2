/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;

import org.ferrule.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Against {@code shared/burst.csv}. */
class BurstStatisticsTest {

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/burst.csv", numLinesToSkip = 1)
    void agreesWithTable(String id, int n, double meanAtm, double sdAtm, double lowerBoundAtm, int ratedAtm) {
        BurstStatistics bursts = new BurstStatistics(n, meanAtm, sdAtm);
        assertEquals(lowerBoundAtm, bursts.lowerBoundAtm(0.95, 0.999), 0.005, id);
        assertEquals(OptionalInt.of(ratedAtm), bursts.ratedAtm(), id);
    }

    @Test
    void readsASampleInAnyUnit() {
        BurstStatistics bursts = BurstStatistics.of(List.of(Pressure.parse("20 atm"), Pressure.parse("2229.15 kPa"),
                Pressure.parse("24 atm")));
        assertEquals(3, bursts.n());
        assertEquals(22, bursts.meanAtm(), 1e-12);
        assertEquals(2, bursts.sdAtm(), 1e-12);
    }

    @Test
    void twoBurstsAreASample() {
        BurstStatistics bursts = BurstStatistics.of(List.of(Pressure.parse("20 atm"), Pressure.parse("24 atm")));
        assertEquals(22, bursts.meanAtm(), 1e-12);
        assertEquals(Math.sqrt(8), bursts.sdAtm(), 1e-12);
    }

    @Test
    void supportsNoLabelWhereTheSampleSpreadsTooMuch() {
        assertEquals(OptionalInt.empty(), new BurstStatistics(3, 20, 5).ratedAtm());
        assertEquals(OptionalInt.of(1), new BurstStatistics(3, 1, 0).ratedAtm());
        assertEquals(OptionalInt.empty(), new BurstStatistics(3, 0.99, 0).ratedAtm());
    }

    @ParameterizedTest
    @CsvSource({ "1, 20, 1", "5, 0, 1", "5, NaN, 1", "5, 20, -1", "5, 20, NaN", "5, Infinity, 1", "5, 20, Infinity" })
    void refusesWhatIsNoSample(int n, double meanAtm, double sdAtm) {
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> new BurstStatistics(n, meanAtm, sdAtm));
        assertTrue(refused.getMessage().contains("n " + n) && refused.getMessage().contains(meanAtm + " atm"));
    }

    @Test
    void refusesASingleBurst() {
        assertThrows(IllegalArgumentException.class, () -> BurstStatistics.of(List.of(Pressure.parse("20 atm"))));
        assertThrows(IllegalArgumentException.class, () -> BurstStatistics.of(List.of()));
    }
}
