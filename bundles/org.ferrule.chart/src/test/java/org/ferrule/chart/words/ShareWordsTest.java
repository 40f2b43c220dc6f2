/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;

import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares in per cent, two digits of them, and the decimals of lengths. */
class ShareWordsTest {

    @ParameterizedTest
    @CsvSource({ "0.1234, 13 %, 12 %, 12 %", "0.128, 13 %, 12 %, 13 %", "0.00451, 0.46 %, 0.45 %, 0.45 %",
        "0, 0 %, 0 %, 0 %", "1, 100 %, 100 %, 100 %", "0.999, 100 %, 99 %, 100 %",
        "0.000001, 0.0001 %, 0.0001 %, 0.0001 %", "1e-9, <0.0001 %, <0.0001 %, <0.0001 %" })
    void boundsAreRoundedAwayFromWhatTheyBound(double share, String atMost, String atLeast, String plain) {
        assertEquals(atMost, ShareWords.atMost(share));
        assertEquals(atLeast, ShareWords.atLeast(share));
        assertEquals(plain, ShareWords.plain(share));
    }

    @ParameterizedTest
    @CsvSource({ "1, 3", "2, 4", "4, 6" })
    void inchesHaveTwoDecimalsMore(int millimetres, int inches) {
        UnitPreferences units = new UnitPreferences(LengthUnit.MILLIMETRE, Optional.empty(), millimetres)
                .with(LengthUnit.INCH);
        assertEquals(Optional.of(LengthUnit.INCH), units.secondary());
        assertEquals(millimetres, units.decimals(LengthUnit.MILLIMETRE));
        assertEquals(millimetres, units.decimals(LengthUnit.FRENCH));
        assertEquals(inches, units.decimals(LengthUnit.INCH));
    }

    @Test
    void refusesNoDecimalsAndMoreThanFour() {
        for (int decimals : new int[] { 0, 5 }) {
            assertThrows(IllegalArgumentException.class,
                    () -> new UnitPreferences(LengthUnit.INCH, Optional.empty(), decimals));
        }
        UnitPreferences units = UnitPreferences.in(LengthUnit.FRENCH);
        assertThrows(IllegalArgumentException.class, () -> units.with(LengthUnit.METRE));
    }
}
