/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BinomialIntervalTest {

    /** Exact limits of Clopper and Pearson as printed in tables of binomial limits, 95 %; from memory. */
    @ParameterizedTest
    @CsvSource({ "0, 10, 0, 0.3085", "1, 10, 0.0025, 0.4450", "5, 10, 0.1871, 0.8129", "10, 10, 0.6915, 1",
        "0, 100, 0, 0.0362", "10, 100, 0.0490, 0.1762" })
    void agreesWithPrintedLimits(int count, int n, double low, double high) {
        BinomialInterval interval = BinomialInterval.of(count, n, 0.95);
        assertEquals(low, interval.low(), 0.5e-4);
        assertEquals(high, interval.high(), 0.5e-4);
    }

    /** Closed form: of none in n, the upper end is 1 - doubt^(1/n). */
    @Test
    void ofNoneInManyHasAClosedForm() {
        assertEquals(1 - Math.pow(0.005, 1 / 5000.0), BinomialInterval.of(0, 5000, 0.99).high(), 1e-12);
    }

    /** One specimen alone already excludes shares near one end: the other end is 1 - doubt, or doubt. */
    @Test
    void ofOneSpecimenSomethingIsKnown() {
        assertEquals(0.975, BinomialInterval.of(0, 1, 0.95).high(), 1e-12);
        assertEquals(0, BinomialInterval.of(0, 1, 0.95).low());
        assertEquals(0.025, BinomialInterval.of(1, 1, 0.95).low(), 1e-12);
        assertEquals(1, BinomialInterval.of(1, 1, 0.95).high());
    }

    @ParameterizedTest
    @CsvSource({ "-1, 10, 0.95", "11, 10, 0.95", "0, 0, 0.95", "1, 10, 0", "1, 10, 1", "1, 10, NaN" })
    void refusesWhatIsNoShare(int count, int n, double confidence) {
        assertThrows(IllegalArgumentException.class, () -> BinomialInterval.of(count, n, confidence));
    }
}
