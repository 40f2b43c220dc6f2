/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.statistics.ToleranceStack.Contributor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts as people type them. */
class KindsTest {

    @ParameterizedTest
    @CsvSource({ "1.2mm, 1.2", "0.047in, 1.1938", "3Fr, 1", "1.2 mm nom, 1.2", "0.070 in (1.78 mm), 1.778" })
    void readsPlainLengths(String text, String mm) {
        assertEquals(Length.of(mm, LengthUnit.MILLIMETRE), Kinds.LENGTH.reader().apply(text));
    }

    @ParameterizedTest
    @ValueSource(strings = { "1.2", "1.2 mm min", "1.2 mm max", "1.2..1.3 mm", "1.2 mm +-0.1", "1.2 mm sd 0.1 n 4",
        "19 G", "-1 mm" })
    void refusesWhatIsNotOnePlainLength(String text) {
        assertThrows(IllegalArgumentException.class, () -> Kinds.LENGTH.reader().apply(text));
    }

    @ParameterizedTest
    @CsvSource({ "180 deg, 180", "180deg, 180", "180\u00b0, 180", "90 degrees, 90", "-.5 deg, -0.5",
        "3.141592653589793 rad, 180" })
    void readsAngles(String text, double degrees) {
        assertEquals(degrees, Kinds.ANGLE.reader().apply(text), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({ "0.95, 0.95", "95 %, 0.95", "95%, 0.95", "1.7e-8, 1.7E-8", ".5, 0.5" })
    void readsShares(String text, BigDecimal share) {
        assertEquals(share.stripTrailingZeros(), Kinds.SHARE.reader().apply(text).stripTrailingZeros());
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "x", "1,5", "1.5.2", "1e9999", "1234567890123456789012345678901" })
    void refusesWhatIsNotANumber(String text) {
        assertThrows(IllegalArgumentException.class, () -> Kinds.numberIn("N").reader().apply(text));
    }

    @Test
    void countsHaveNineDigitsAtMost() {
        assertEquals(999_999_999, Kinds.COUNT.reader().apply("999999999"));
        assertThrows(IllegalArgumentException.class, () -> Kinds.COUNT.reader().apply("1000000000"));
        assertThrows(IllegalArgumentException.class, () -> Kinds.COUNT.reader().apply("-1"));
    }

    @ParameterizedTest
    @CsvSource({ "2 mm +-0.1, 2, 1.9, 2.1, true", "+2 mm +-0.1, 2, 1.9, 2.1, true",
        "-2 mm +0.1/-0.2, 2, 1.8, 2.1, false", "\u22122 mm \u00b10.1, 2, 1.9, 2.1, false",
        "- 1.9..2.2 mm, 2.05, 1.9, 2.2, false" })
    void readsContributors(String text, String nominal, String low, String high, boolean adds) {
        assertEquals(new Contributor(mm(nominal), mm(low), mm(high), adds), Kinds.CONTRIBUTOR.reader().apply(text));
    }

    @Test
    void knowsWhatWasMeasuredByItsUnit() {
        assertInstanceOf(Measure.OfLength.class, Measure.kind().reader().apply("3 Fr"));
        assertInstanceOf(Measure.OfPressure.class, Measure.kind().reader().apply("3 bar"));
        assertEquals(new Measure.OfGauge("19 ga"), Measure.kind().reader().apply(" 19 ga "));
    }

    @Test
    void rangesAreSaidInWords() {
        assertEquals("", Limits.NONE.inWords());
        assertEquals("above 0 mm", Limits.above("0 mm").inWords());
        assertEquals("at least 2", Limits.from("2").inWords());
        assertEquals("above 0, below 1", Limits.between("0", "1").inWords());
        assertEquals("at least 0, at most 1", Limits.fromTo("0", "1").inWords());
        assertEquals("at least 0.5, below 1", Limits.fromToBelow("0.5", "1").inWords());
        assertEquals("above 0 deg, at most 90 deg", Limits.aboveTo("0 deg", "90 deg").inWords());
    }

    private static Length mm(String decimal) {
        return Length.of(decimal, LengthUnit.MILLIMETRE);
    }
}
