/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import static org.ferrule.shelf.code.CodeTests.read;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CodeDatesTest {

    /** GS1 General Specifications, section 7.12, from memory: 49 years back, 50 ahead. */
    @ParameterizedTest
    @CsvSource({ "2026, 76, 2076", "2026, 77, 1977", "2026, 99, 1999", "2026, 0, 2000", "2026, 26, 2026",
        "2051, 1, 2101", "2051, 2, 2002", "2050, 0, 2100", "2050, 99, 2099", "2099, 49, 2149", "2099, 50, 2050",
        "2000, 50, 2050", "2000, 51, 1951" })
    void centurySlidesWithToday(int now, int digits, int year) {
        assertEquals(year, new CodeDates(LocalDate.of(now, 6, 1)).year(digits));
    }

    @Test
    void yearIsTheOneWithItsDigitsFrom49YearsBackTo50Ahead() {
        for (int now = 1990; now < 2110; now++) {
            for (int year = now - 49; year <= now + 50; year++) {
                assertEquals(year, new CodeDates(LocalDate.of(now, 1, 31)).year(year % 100), "in " + now);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({ "270200, 2027-02-28", "280200, 2028-02-29", "271200, 2027-12-31", "280229, 2028-02-29",
        "260430, 2026-04-30" })
    void dayZeroIsTheLastOfItsMonth(String digits, LocalDate date) {
        assertEquals(Optional.of(date), read("(17)" + digits).expiry());
        assertEquals(Optional.of(date), read("(11)" + digits).made());
    }
}
