/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.stream.Stream;

import org.ferrule.calc.result.Basis;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.DetailValue;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every calculator reproduces the figures of {@code shared/calculators.csv}, each with its source. */
class CalculatorTableTest {

    @ParameterizedTest
    @CsvFileSource(files = "../../shared/calculators.csv", numLinesToSkip = 1)
    void agreesWithTable(String id, String calculator, String arguments, BigDecimal value, String unit, BigDecimal low,
            BigDecimal high, String details) {
        Calculation answer = Given.answer(calculator, arguments);
        assertNear(value, answer.value().orElseThrow());
        assertEquals(unit, answer.unit());
        assertEquals(low != null, answer.interval().isPresent(), "interval");
        answer.interval().ifPresent(interval -> {
            assertNear(low, interval.low());
            assertNear(high, interval.high());
        });
        if (details != null) {
            Stream.of(details.split("; ")).map(detail -> detail.split("=")).forEach(
                    pair -> assertDetail(pair[1], answer.detail(pair[0]).orElseThrow(), pair[0]));
        }
        assertIsInWords(answer);
    }

    private static void assertDetail(String expected, DetailValue actual, String name) {
        if (actual instanceof DetailValue.Number number) {
            assertNear(new BigDecimal(expected), number.value());
        } else if (actual instanceof DetailValue.Flag flag) {
            assertEquals(expected, flag.value() ? "yes" : "no", name);
        } else {
            assertEquals(new DetailValue.Text(expected), actual, name);
        }
    }

    /** Answers are rounded to the careful side, so they may lie up to one unit of the table's last digit off. */
    private static void assertNear(BigDecimal expected, BigDecimal actual) {
        assertTrue(expected.subtract(actual).abs().compareTo(expected.ulp()) <= 0, expected + ", but was " + actual);
    }

    private static void assertIsInWords(Calculation answer) {
        Basis basis = answer.basis();
        Stream.of(answer.what(), basis.method(), basis.validity(), basis.source(), basis.caution()).forEach(text -> {
            assertFalse(text.isBlank());
            assertFalse(text.matches(".*\\{[0-9]}.*"), text);
        });
    }
}
