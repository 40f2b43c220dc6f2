/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formats round in the direction that their use needs. */
class LengthFormatTest {
    private static final LengthUnit MM = LengthUnit.MILLIMETRE;

    @ParameterizedTest
    @CsvSource({
        "1.776,  1.78, 1.77, 1.77, 1.78",
        "1.780,  1.78, 1.78, 1.78, 1.78",
        "-0.011, -0.01, -0.02, -0.02, -0.01",
        "0.001,  <0.01, <0.01, <0.01, 0.01",
        "-0.001, >-0.01, -0.01, -0.01, >-0.01",
        "0,      0.00, 0.00, 0.00, 0.00",
        "0.125,  0.12, 0.12, 0.12, 0.13" })
    void roundsInTheStatedDirection(String mm, String plain, String clearance, String atMost, String atLeast) {
        Length length = Length.of(mm, MM);
        assertEquals(plain, LengthFormat.plain(MM, 2).number(length));
        assertEquals(clearance, LengthFormat.clearance(MM, 2).number(length));
        assertEquals(atMost, LengthFormat.atMost(MM, 2).number(length));
        assertEquals(atLeast, LengthFormat.atLeast(MM, 2).number(length));
    }

    @ParameterizedTest
    @CsvSource({ "0.070, INCH, 1.778 mm", "1, FRENCH, 0.3333333 mm", "3, FRENCH, 1 mm", "145, CENTIMETRE, 1450 mm" })
    void faithfulFormatUsesAsFewDecimalsAsAreExact(String value, LengthUnit unit, String expected) {
        assertEquals(expected, LengthFormat.faithful(MM).format(Length.of(value, unit)));
    }

    @Test
    void writesTheUnit() {
        assertEquals("0.070 in", LengthFormat.plain(LengthUnit.INCH, 3).format(Length.of("1.778", MM)));
    }

    @Test
    void writesNoneToTwelveDecimals() {
        assertEquals("2", LengthFormat.plain(MM, 0).number(Length.of("1.778", MM)));
        assertEquals("1.778000000000", LengthFormat.plain(MM, 12).number(Length.of("1.778", MM)));
    }

    @Test
    void refusesDecimalsAndModesThatMakeNoSense() {
        assertThrows(IllegalArgumentException.class, () -> LengthFormat.plain(MM, -1));
        assertThrows(IllegalArgumentException.class, () -> LengthFormat.plain(MM, 13));
        assertThrows(IllegalArgumentException.class, () -> LengthFormat.of(MM, 2, RoundingMode.UNNECESSARY));
    }
}
