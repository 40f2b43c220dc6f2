/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthWordsTest {
    private final LengthWords mm = new LengthWords(UnitPreferences.in(LengthUnit.MILLIMETRE));

    /** 1 thousandth of an inch is 0.0254 mm (UCUM essence 2.2: [mil_i]). */
    @ParameterizedTest
    @CsvSource({ "0.0254, 1.0", "0.0508, 2.0", "0.0507, 1.9", "0, 0.0", "0.001, <0.1", "-0.001, -0.1",
        "-0.0254, -1.0", "1.778, 70.0" })
    void writesThousandthsOfAnInchRoundedDown(double clearance, String words) {
        assertEquals(words, mm.thousandths(mm(clearance)));
    }

    @ParameterizedTest
    @CsvSource({ "314.4, 31.4 cm", "9.96, 10.0 mm", "10, 1.0 cm", "-42, 4.2 cm", "0.02, <0.1 mm", "0, 0 cm" })
    void writesDistancesInCentimetresAndShortOnesInMillimetres(double distance, String words) {
        assertEquals(words, mm.length(mm(distance)));
    }

    @Test
    void roundsEachKindInItsSafeDirection() {
        Length length = mm(1.0251);
        assertEquals("1.03 mm", mm.device(length));
        assertEquals("1.02 mm", mm.lumen(length));
        assertEquals("1.02 mm", mm.clearance(length));
        assertEquals("10.3 cm", mm.shortfall(mm(102.51)));
        assertEquals("-0.02 mm", mm.clearance(mm(-0.011)));
        assertEquals("0.02 mm", mm.overlap(mm(-0.011)));
    }

    @Test
    void refusesUnitsThatNobodyWritesDiametersIn() {
        assertThrows(IllegalArgumentException.class, () -> UnitPreferences.in(LengthUnit.METRE));
        assertThrows(IllegalArgumentException.class,
                () -> new UnitPreferences(LengthUnit.INCH, Optional.empty(), 9));
    }
}
