/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Arithmetic of exact lengths. */
class LengthTest {

    @Test
    void threeFrenchAreOneMillimetre() {
        Length french = Length.of("1", LengthUnit.FRENCH);
        assertEquals(Length.of("1", LengthUnit.MILLIMETRE), french.plus(french).plus(french));
    }

    @Test
    void inchesFrenchAndMillimetresSubtractExactly() {
        Length clearance = Length.of("0.070", LengthUnit.INCH).minus(Length.of("2.6", LengthUnit.FRENCH))
                .minus(Length.of("0.014", LengthUnit.INCH));
        assertEquals(new Length(1_667_200), clearance.plus(Length.of("0", LengthUnit.MILLIMETRE)));
    }

    @ParameterizedTest
    @CsvSource({ "7, 2, 4", "5, 2, 2", "-7, 2, -4", "9, 3, 3", "7, -2, -4" })
    void divisionRoundsHalfEven(long thirds, long divisor, long expected) {
        assertEquals(new Length(expected), new Length(thirds).dividedBy(divisor));
    }

    @Test
    void sumOutOfRangeIsAnError() {
        assertThrows(ArithmeticException.class, () -> new Length(Long.MAX_VALUE).plus(new Length(1)));
        assertThrows(ArithmeticException.class, () -> new Length(Long.MIN_VALUE).negated());
        assertThrows(ArithmeticException.class, () -> Length.of("1e10", LengthUnit.METRE));
    }

    @ParameterizedTest
    @ValueSource(doubles = { Double.NaN, Double.POSITIVE_INFINITY })
    void refusesNumberThatIsNotFinite(double mm) {
        assertThrows(IllegalArgumentException.class, () -> Length.ofMm(mm));
    }

    /** A third of a nanometre is the smallest step, so a number of millimetres is met within half of one. */
    @ParameterizedTest
    @CsvSource({ "1.778, 5334000", "-0.2, -600000", "1e-7, 0", "2e-7, 1", "0, 0" })
    void takesTheNearestLength(double mm, long thirdNanometres) {
        assertEquals(new Length(thirdNanometres), Length.ofMm(mm));
    }

    @Test
    void nothingIsNotNegative() {
        assertFalse(Length.ZERO.isNegative());
        assertTrue(Length.ofMm(-1).isNegative());
    }

    @Test
    void ordersBySize() {
        Length small = Length.of("0.9", LengthUnit.MILLIMETRE);
        Length large = Length.of("0.9001", LengthUnit.MILLIMETRE);
        assertEquals(small, small.min(large));
        assertEquals(large, small.max(large));
        assertTrue(small.minus(large).isNegative());
        assertEquals(large.minus(small), small.minus(large).abs());
        assertEquals(Length.of("0.0003", LengthUnit.MILLIMETRE), large.minus(small).times(3));
        assertEquals(Length.of("0.0003", LengthUnit.MILLIMETRE), small.minus(large).times(-3));
    }

    @Test
    void saysItsSizeInMillimetres() {
        assertEquals("1.778 mm", Length.of("0.070", LengthUnit.INCH).toString());
        assertEquals(1.778, Length.of("0.070", LengthUnit.INCH).mm());
    }

    @Test
    void sampleNeedsTwoSpecimens() {
        Length mean = Length.of("1", LengthUnit.MILLIMETRE);
        assertEquals(2, new Sample(mean, Length.ZERO, OptionalInt.of(2)).n().orElseThrow());
        assertThrows(IllegalArgumentException.class,
                () -> new Sample(mean, Length.ZERO, OptionalInt.of(1)));
        assertThrows(IllegalArgumentException.class,
                () -> new Sample(mean, mean.negated(), OptionalInt.empty()));
    }
}
