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
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a printed dimension says, and where a text goes wrong. */
class DimensionTest {

    @ParameterizedTest
    @CsvSource(quoteCharacter = '~', textBlock = """
            0.070 in min               | MINIMUM  | 0.070 in | 1.778 | -      | -
            0.070" min                 | MINIMUM  | 0.070 in | 1.778 | -      | -
            0.070\u2033                | STATED   | 0.070 in | -     | 1.778  | -
            .070 in                    | STATED   | 0.070 in | -     | 1.778  | -
            2.7 Fr max                 | MAXIMUM  | 2.7 Fr   | -     | -      | 0.9
            2.7F                       | STATED   | 2.7 Fr   | -     | 0.9    | -
            2.7 French                 | STATED   | 2.7 Fr   | -     | 0.9    | -
            max 2.7 Fr                 | MAXIMUM  | 2.7 Fr   | -     | -      | 0.9
            1.02 mm ±0.03              | STATED   | 1.02 mm  | 0.99  | 1.02   | 1.05
            1.02 ± 0.03 mm             | STATED   | 1.02 mm  | 0.99  | 1.02   | 1.05
            1.02 mm nom +/- 0.03       | NOMINAL  | 1.02 mm  | 0.99  | 1.02   | 1.05
            1.02mm+-0.03               | STATED   | 1.02 mm  | 0.99  | 1.02   | 1.05
            1.02 mm +0.02/-0.01        | STATED   | 1.02 mm  | 1.01  | 1.02   | 1.04
            1.02 mm -0.01/+0.02        | STATED   | 1.02 mm  | 1.01  | 1.02   | 1.04
            1.02 +0.02 -0 mm           | STATED   | 1.02 mm  | 1.02  | 1.02   | 1.04
            0.88..0.94 mm              | RANGE    | 0.88 mm  | 0.88  | -      | 0.94
            0.88 mm .. 0.94 mm         | RANGE    | 0.88 mm  | 0.88  | -      | 0.94
            1.015 mm sd 0.008 n 12     | SAMPLE   | 1.015 mm | -     | 1.015  | -
            1.015 sd 0.008 mm          | SAMPLE   | 1.015 mm | -     | 1.015  | -
            1.78 mm                    | STATED   | 1.78 mm  | -     | 1.78   | -
            1.78 mm nom                | NOMINAL  | 1.78 mm  | -     | 1.78   | -
            1.02 mm measured           | MEASURED | 1.02 mm  | -     | 1.02   | -
            0.070 in (1.78 mm)         | STATED   | 0.070 in | -     | 1.778  | -
            0.070 in (1.78 mm) min     | MINIMUM  | 0.070 in | 1.778 | -      | -
            0.070 in / 1.78 mm min     | MINIMUM  | 0.070 in | 1.778 | -      | -
            2.7 Fr / 0.9 mm / 0.035 in | STATED   | 2.7 Fr   | -     | 0.9    | -
            450 µm                     | STATED   | 450 um   | -     | 0.45   | -
            0 mm                       | STATED   | 0 mm     | -     | 0      | -
            \u00a0145\u202fcm          | STATED   | 145 cm   | -     | 1450   | -
            """, delimiter = '|')
    void saysOnlyWhatItsTextStates(String text, Meaning meaning, String label, String low, String centre, String high) {
        Dimension dimension = Dimension.parse(text);
        assertEquals(meaning, dimension.meaning());
        assertEquals(Dimension.parse(label).label(), dimension.label());
        assertEquals(Dimension.parse(label).unit(), dimension.unit());
        assertEquals(mm(low), dimension.low());
        assertEquals(mm(centre), dimension.centre());
        assertEquals(mm(high), dimension.high());
    }

    /** A tolerance as large as the figure, a range of one length, the least sample, and figures of the most digits. */
    @ParameterizedTest
    @CsvSource({ "1.02 mm \u00b11.02, 0, 1.02, 2.04", "0.88..0.88 mm, 0.88, -, 0.88",
        "1.015 mm sd 0.008 n 2 measured, -, 1.015, -", "123456789 um, -, 123456.789, -",
        "0.12345678 mm, -, 0.12345678, -",
        "1.0000000000000000000000000000 mm, -, 1, -" })
    void readsWhatJustMakesSense(String text, String low, String centre, String high) {
        Dimension dimension = Dimension.parse(text);
        assertEquals(mm(low), dimension.low());
        assertEquals(mm(centre), dimension.centre());
        assertEquals(mm(high), dimension.high());
    }

    @Test
    void isWhatItsTextIs() {
        Dimension dimension = Dimension.of(Length.of("1.778", LengthUnit.MILLIMETRE), LengthUnit.INCH);
        assertEquals("0.07 in", dimension.toString());
        assertEquals(LengthUnit.INCH, dimension.unit());
        assertEquals(Dimension.lenient("0.07 in"), dimension);
        assertEquals(Dimension.lenient("0.07 in").hashCode(), dimension.hashCode());
        assertNotEquals(Dimension.parse("0.070 in"), dimension, "printed otherwise");
        assertNotEquals(dimension, "0.07 in");
    }

    private static Optional<Length> mm(String decimal) {
        return decimal.equals("-") ? Optional.empty() : Optional.of(Length.of(decimal, LengthUnit.MILLIMETRE));
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '~', textBlock = """
            ~~                        | 0  | a number
            ~   ~                     | 3  | a number
            0.070                     | 5  | a unit
            1.78 furlong              | 5  | a unit
            21 G                      | 3  | gauge
            21 gauge                  | 3  | gauge
            1,02 mm                   | 1  | decimal point
            1,450 mm                  | 1  | 1450
            -1 mm                     | 0  | not negative
            −1 mm                     | 0  | not negative
            mm                        | 0  | a number
            1.78 MM                   | 5  | a unit
            1.2.3 mm                  | 3  | a unit
            1, mm                     | 1  | a unit
            1.78 furlong              | 5  | a unit (mm, cm, um, m, in, Fr)
            21 ga                     | 3  | gauge
            1.015 mm sd 0.008 max     | 18 | no such word
            1.78 mm mm                | 8  | the end
            0.88-0.94 mm              | 4  | range
            1.02 mm +0.02             | 8  | both tolerances
            0.94..0.88 mm             | 6  | upper end
            0.88 mm .. 0.5 in / 3 ells| 22 | a unit
            1.02 mm ±1.03             | 9  | tolerance
            1.02 mm +1.03/-1.03       | 15 | tolerance
            1.02 mm ±0.03 max         | 14 | no such word
            0.88..0.94 mm min         | 14 | no such word
            1.02 mm min max           | 12 | no second word
            0.070 in min (1.78 mm max)| 22 | no second word
            0.070 in (1.78 mm         | 17 | closing bracket
            1.015 mm sd 0.008 n 1     | 20 | whole number
            1.015 mm sd 0.008 n 1.5   | 20 | whole number
            1000 m                    | 0  | 1000 m
            99999999999999999999999 mm| 0  | 1000 m
            1234567890123456789012345678901 mm | 0 | digits
            ٣ mm                      | 0  | a number
            <0.01 mm                  | 0  | a number
            """, delimiter = '|')
    void saysWhereItsTextGoesWrong(String text, int position, String expected) {
        QuantitySyntaxException e = assertThrows(QuantitySyntaxException.class, () -> Dimension.parse(text));
        assertEquals(position, e.position(), e.getMessage());
        assertTrue(e.expected().contains(expected), e.expected());
        assertEquals(text, e.text());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0,9 mm   | at ",9 mm"
            0.9      | at its end
            """)
    void messageShowsTheRestOfTheText(String text, String place) {
        String message = assertThrows(QuantitySyntaxException.class, () -> Dimension.parse(text)).getMessage();
        assertTrue(message.startsWith("cannot read \"" + text + "\"") && message.endsWith(place), message);
    }

    /** Only of a gauge it is said that it means nothing. */
    @Test
    void strangeUnitIsNoGauge() {
        String expected = Dimension.lenient("1.78 furlong").problem().orElseThrow().expected();
        assertFalse(expected.contains("gauge"), expected);
    }

    @Test
    void keepsUnreadableTextWithItsProblem() {
        Dimension dimension = Dimension.lenient("1,02 mm");
        assertEquals("1,02 mm", dimension.text());
        assertFalse(dimension.readable());
        assertEquals(1, dimension.problem().orElseThrow().position());
        assertTrue(Stream.of(dimension.low(), dimension.centre(), dimension.high()).allMatch(Optional::isEmpty));
        assertTrue(dimension.sample().isEmpty());
        assertThrows(IllegalStateException.class, dimension::label);
        assertThrows(IllegalStateException.class, dimension::meaning);
        assertThrows(IllegalStateException.class, () -> dimension.movedTo(Length.ZERO));
    }

    @Test
    void keepsSample() {
        Sample sample = Dimension.parse("1.015 mm sd 0.008 n 12").sample().orElseThrow();
        assertEquals(Length.of("1.015", LengthUnit.MILLIMETRE), sample.mean());
        assertEquals(Length.of("0.008", LengthUnit.MILLIMETRE), sample.standardDeviation());
        assertEquals(12, sample.n().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = { "0.070 in (1.78 mm)", "0.070 in (1.8 mm)", "1.8 mm (0.070 in)", "6 Fr (2.00 mm)",
        "8 Fr / 2.67 mm", "0.88..0.94 mm (0.0346..0.0370 in)", "2.7 Fr / 0.90 mm / 0.035 in",
        "45 mm (4 cm)", "4.5 cm (45.5 mm)", "1.02 mm \u00b10.03 (0.040 in \u00b10.001)",
        "1.015 mm sd 0.008 (0.0400 in sd 0.0003)" })
    void acceptsSecondStatementWithinRounding(String text) {
        assertEquals(List.of(), Dimension.parse(text).warnings(FigureKind.LENGTH).stream()
                .filter(warning -> warning.code() == QuantityWarning.Code.STATEMENTS_DISAGREE).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.070 in (1.87 mm)           | 10 | 17
            6 Fr / 2.1 mm                | 7  | 13
            8 Fr / 2.66 mm               | 7  | 14
            0.88..0.94 mm / 0.88 mm      | 16 | 23
            1.02 mm ±0.03 (0.040 in ±0.010)         | 15 | 30
            1.015 mm sd 0.008 (0.0400 in sd 0.0030) | 19 | 38
            """)
    void warnsOfSecondStatementThatDisagrees(String text, int start, int end) {
        QuantityWarning warning = Dimension.parse(text).warnings(FigureKind.OUTER_DIAMETER).get(0);
        assertEquals(QuantityWarning.Code.STATEMENTS_DISAGREE, warning.code());
        assertEquals(start, warning.start());
        assertEquals(end, warning.end());
    }

    /** Guidewires of 0.007 in to 0.045 in; the ends are written in millimetres for the thinnest. */
    @ParameterizedTest
    @ValueSource(strings = { "0.178 mm", "0.045 in" })
    void thinnestAndThickestWireArePlausible(String text) {
        assertEquals(List.of(), Dimension.parse(text).warnings(FigureKind.WIRE_DIAMETER));
    }

    @Test
    void warnsOfWireInTheWrongUnit() {
        QuantityWarning warning = Dimension.parse("0.014 mm").warnings(FigureKind.WIRE_DIAMETER).get(0);
        assertEquals("0.014 mm is implausibly small: less than 0.178 mm; 0.014 in would be plausible",
                warning.message());
        assertEquals(0, warning.start());
        assertEquals(5, warning.end());
    }

    @ParameterizedTest
    @CsvSource({ "-0.2 mm, -0.2", "\u22120.2 mm, -0.2", "+0.2 mm, 0.2", "0.2 mm, 0.2", "-3 Fr, -1" })
    void readsSignedOffsets(String text, String mm) {
        assertEquals(Length.of(mm, LengthUnit.MILLIMETRE), Offset.parse(text).value());
    }

    @Test
    void offsetIsWhatItsTextIs() {
        Offset offset = Offset.lenient("-0.2 mm");
        assertTrue(offset.readable() && offset.problem().isEmpty());
        assertEquals("-0.2 mm", offset.toString());
        assertEquals(Offset.parse("-0.2 mm"), offset);
        assertEquals(Offset.parse("-0.2 mm").hashCode(), offset.hashCode());
        assertNotEquals(Offset.parse("-0.20 mm"), offset, "printed otherwise");
        assertNotEquals(offset, "-0.2 mm");
    }

    @Test
    void keepsUnreadableOffset() {
        Offset offset = Offset.lenient("-0.2");
        assertFalse(offset.readable());
        assertThrows(IllegalStateException.class, offset::value);
        assertEquals("-0.2", offset.text());
        assertEquals(4, offset.problem().orElseThrow().position());
    }
}
