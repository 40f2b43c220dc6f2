/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pressures as printed. */
class PressureTest {

    @ParameterizedTest
    @CsvSource({ "14 atm, 1418550, ATMOSPHERE", "12 atm / 1216 kPa, 1215900, ATMOSPHERE", "14.2 bar, 1420000, BAR",
        "1216 kPa, 1216000, KILOPASCAL", "1.4 MPa, 1400000, MEGAPASCAL", "14atm (206 psi), 1418550, ATMOSPHERE" })
    void firstStatementCounts(String text, int pascals, PressureUnit unit) {
        Pressure pressure = Pressure.parse(text);
        assertEquals(text, pressure.text());
        assertEquals(pascals, pressure.pascals().doubleValue());
        assertEquals(unit, pressure.unit());
        assertTrue(pressure.warnings().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            14              | 2  | a unit
            14 mm           | 3  | a unit
            14 ats          | 3  | atm,
            -1 atm          | 0  | not negative
            1,4 MPa         | 1  | decimal point
            14 atm 12       | 7  | the end
            14 atm (1419 kPa| 16 | closing bracket
            atm             | 0  | a number
            """)
    void saysWhereItsTextGoesWrong(String text, int position, String expected) {
        QuantitySyntaxException e = assertThrows(QuantitySyntaxException.class, () -> Pressure.parse(text));
        assertEquals(position, e.position());
        assertTrue(e.expected().contains(expected), e.expected());
    }

    @Test
    void warnsOfStatementsThatDisagree() {
        QuantityWarning warning = Pressure.parse("12 atm / 1261 kPa").warnings().get(0);
        assertEquals("12 atm and 1261 kPa differ by more than rounding; the first is used", warning.message());
        assertEquals(9, warning.start());
        assertEquals(17, warning.end());
    }

    @ParameterizedTest
    @ValueSource(strings = { "14 kPa", "14 mmHg", "14 MPa" })
    void warnsOfImplausiblePressure(String text) {
        QuantityWarning warning = Pressure.parse(text).warnings().get(0);
        assertTrue(warning.message().startsWith(text + " is implausibly "), warning.message());
    }

    /** The ends of what is plausible belong to it. */
    @ParameterizedTest
    @ValueSource(strings = { "0.5 atm", "50 atm" })
    void leastAndMostAreStillPlausible(String text) {
        assertEquals(List.of(), Pressure.parse(text).warnings());
    }

    @Test
    void isWhatItsTextIs() {
        Pressure pressure = Pressure.lenient("14 atm");
        assertTrue(pressure.readable() && pressure.problem().isEmpty());
        assertEquals("14 atm", pressure.toString());
        assertEquals(Pressure.parse("14 atm"), pressure);
        assertEquals(Pressure.parse("14 atm").hashCode(), pressure.hashCode());
        assertNotEquals(Pressure.parse("14.0 atm"), pressure, "printed otherwise");
        assertNotEquals(pressure, "14 atm");
    }

    @Test
    void keepsUnreadableText() {
        Pressure pressure = Pressure.lenient("14 ats");
        assertFalse(pressure.readable());
        assertEquals("14 ats", pressure.text());
        assertEquals(3, pressure.problem().orElseThrow().position());
        assertThrows(IllegalStateException.class, pressure::pascals);
    }
}
