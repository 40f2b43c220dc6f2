/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Against {@code shared/sample-sizes.csv}. */
class SampleSizeTest {

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/sample-sizes.csv", numLinesToSkip = 1)
    void agreesWithTable(String id, double confidence, double coverage, int n) {
        assertEquals(n, SampleSize.zeroFailures(confidence, coverage), id);
    }

    /** Where the share to the power of n meets the rest exactly, rounding asks for no specimen more. */
    @ParameterizedTest
    @CsvSource({ "0.75, 0.5, 2", "0.99, 0.1, 2", "0.999, 0.1, 3", "0.875, 0.5, 3", "0.5, 0.5, 1", "0.1, 0.5, 1",
        "0.19, 0.9, 2", "0.271, 0.9, 3" })
    void isExactWhereLogarithmsRound(double confidence, double coverage, int n) {
        assertEquals(n, SampleSize.zeroFailures(confidence, coverage));
    }

    /** No number of specimens gives certainty: that is refused as such, not as a sample that is too large. */
    @Test
    void certaintyHasNoSize() {
        Exception refused = assertThrows(IllegalArgumentException.class, () -> SampleSize.zeroFailures(1, 0.95));
        assertEquals("no sample size for confidence 1.0, coverage 0.95", refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource({ "0, 0.9", "1, 0.9", "0.95, 0", "0.95, 1", "NaN, 0.9", "0.95, NaN", "0.95, 0.999999999999" })
    void refusesWhatHasNoSize(double confidence, double coverage) {
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> SampleSize.zeroFailures(confidence, coverage));
        assertTrue(refused.getMessage().contains("" + coverage), refused::getMessage);
    }
}
