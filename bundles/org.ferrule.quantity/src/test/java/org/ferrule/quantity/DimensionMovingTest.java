/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A figure that is moved keeps everything else as it was typed. */
class DimensionMovingTest {

    @ParameterizedTest
    @CsvSource(quoteCharacter = '~', textBlock = """
            0.70 mm max            | 0.72 mm  | 0.72 mm max
            0.70 mm max            | 0.7 mm   | 0.70 mm max
            max 2.7 Fr             | 2.9 Fr   | max 2.9 Fr
            0.070" min             | 0.071 in | 0.071" min
            .070 in                | 0.068 in | .068 in
            .970 in                | 1.010 in | 1.010 in
            142 cm                 | 1400 mm  | 140 cm
            142 cm                 | 1405 mm  | 140.5 cm
            6 Fr                   | 6.5 Fr   | 6.5 Fr
            1.02 mm ±0.03          | 1.10 mm  | 1.10 mm ±0.03
            1.02 +0.02 -0 mm       | 0.98 mm  | 0.98 +0.02 -0 mm
            0.88..0.94 mm          | 0.90 mm  | 0.90..0.96 mm
            9.98 mm .. 9.99 mm     | 10.1 mm  | 10.10 mm .. 10.11 mm
            1.015 mm sd 0.008 n 12 | 1.020 mm | 1.020 mm sd 0.008 n 12
            0.070 in (1.78 mm) min | 0.072 in | 0.072 in (1.83 mm) min
            min 0.070 in (1.78 mm) | 0.072 in | min 0.072 in (1.83 mm)
            """, delimiter = '|')
    void keepsUnitMeaningAndDecimals(String text, String to, String moved) {
        assertEquals(moved, Dimension.parse(text).movedTo(Dimension.parse(to).label()).text());
    }

    @ParameterizedTest
    @CsvSource({ "0.70 mm max, 0.01 mm", "0.070 in, 0.001 in", "142 cm, 1 cm", "2.7 Fr, 0.1 Fr", ".5 mm, 0.1 mm" })
    void lastPlaceIsThatOfThePrintedDigit(String text, String place) {
        assertEquals(Dimension.parse(place).label(), Dimension.parse(text).lastPlace());
    }

    @ParameterizedTest
    @CsvSource({ "0.12 mm, -0.05 mm, -0.05 mm", "-0.10 mm, 0.1 mm, 0.10 mm", "0 mm, 0.02 mm, 0.02 mm",
        "+0.005 in, 0.004 in, 0.004 in", "-0.2mm, -0.25 mm, -0.25mm", "-0.10 mm, -0.1 mm, -0.10 mm" })
    void offsetKeepsUnitAndDecimals(String text, String to, String moved) {
        assertEquals(moved, Offset.parse(text).movedTo(Offset.parse(to).value()).text());
    }

    @ParameterizedTest
    @CsvSource({ "-0.10 mm, 0.01 mm", "0 mm, 1 mm", "0.005 in, 0.001 in" })
    void lastPlaceOfAnOffsetIsThatOfThePrintedDigit(String text, String place) {
        assertEquals(Offset.parse(place).value(), Offset.parse(text).lastPlace());
    }

    @Test
    void staysTheSameWhereItIsNotMoved() {
        Dimension dimension = Dimension.parse("0.70 mm max");
        assertSame(dimension, dimension.movedTo(dimension.label()));
    }

    @Test
    void refusesWhatIsNoDimension() {
        Dimension dimension = Dimension.parse("0.05 mm \u00b10.03");
        Length tooSmall = Length.of("0.02", LengthUnit.MILLIMETRE);
        assertThrows(QuantitySyntaxException.class, () -> dimension.movedTo(tooSmall));
        assertThrows(QuantitySyntaxException.class, () -> dimension.movedTo(tooSmall.negated()));
    }
}
