/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.quantity.DimensionRepair.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DimensionRepairTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = { "0.70 MM | 0.70 mm", "6 Fr. | 6 Fr",
        "6 french. max | 6 Fr max", "0.26 CM | 0.26 cm", "0.070 Inch. | 0.070 in", "1.8 millimetre | 1.8 mm",
        "0.070'' | 0.070in", "0.88..0.94 MM | 0.88..0.94 mm" })
    void unitIsSpelledAsFerruleWritesIt(String typed, String repaired) {
        assertEquals(List.of(new DimensionRepair(Kind.UNIT_SPELLING, repaired)), of(typed, FigureKind.OUTER_DIAMETER));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = { "0,05 mm | 0.05 mm", "1,78 mm max | 1.78 mm max",
        "0,070 in min | 0.070 in min" })
    void decimalCommaBecomesAPoint(String typed, String repaired) {
        assertEquals(List.of(new DimensionRepair(Kind.DECIMAL_POINT, repaired)), DimensionRepair.of(typed,
                Optional.empty()));
    }

    @Test
    void commaThatMaySeparateThousandsStays() {
        assertEquals(List.of(), of("1,234 mm", FigureKind.LENGTH));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = { "0.94..0.88 mm | 0.88..0.94 mm", "0.94 mm..0.88 mm | 0.88 mm..0.94 mm",
        "0.94 .. 0.88 mm | 0.88 .. 0.94 mm" })
    void endsOfAReversedRangeAreExchanged(String typed, String repaired) {
        assertEquals(List.of(new DimensionRepair(Kind.RANGE_ORDER, repaired)), of(typed, FigureKind.INNER_DIAMETER));
    }

    @Test
    void reversedRangeOfTwoUnitsStays() {
        assertEquals(List.of(), of("1 in..0.88 mm", FigureKind.INNER_DIAMETER));
        assertEquals(List.of(), of("9 mm..0.1 cm", FigureKind.LENGTH));
    }

    @ParameterizedTest
    @CsvSource({ "1900,LENGTH,1900 mm", "0.070,INNER_DIAMETER,0.070 in", "0.014,WIRE_DIAMETER,0.014 in",
        "0.070 min,INNER_DIAMETER,0.070 in min" })
    void bareNumberTakesTheOnlyPlausibleUnit(String typed, FigureKind kind, String repaired) {
        assertEquals(List.of(new DimensionRepair(Kind.UNIT_MISSING, repaired)), of(typed, kind));
    }

    @ParameterizedTest
    @CsvSource({ "6,OUTER_DIAMETER", "1.5,INNER_DIAMETER" })
    void bareNumberThatIsPlausibleTwiceStays(String typed, FigureKind kind) {
        assertEquals(List.of(), of(typed, kind));
    }

    @Test
    void metresThatAreMillimetresAreTakenForThem() {
        assertEquals(List.of(new DimensionRepair(Kind.UNIT_LIKELY, "0.70 mm")), of("0.70 m",
                FigureKind.INNER_DIAMETER));
    }

    @Test
    void plainFigureMayBeAnyOfThree() {
        assertEquals(List.of("0.070 in min", "0.070 in nom", "0.070 in max"),
                of("0.070 in", FigureKind.INNER_DIAMETER).stream().map(DimensionRepair::text).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = { "0.070 in min", "0.88..0.94 mm", "1.02 mm \u00b10.03", "thick", "" })
    void nothingIsOfferedForWhatIsCompleteOrHopeless(String typed) {
        assertEquals(List.of(), of(typed, FigureKind.INNER_DIAMETER));
    }

    @ParameterizedTest
    @ValueSource(strings = { "0,94..0,88 MM", "0.94..0.88 Inch.", "0.94..0.88 MM" })
    void everyRepairCanBeRead(String typed) {
        assertTrue(of(typed, FigureKind.INNER_DIAMETER).stream()
                .allMatch(repair -> Dimension.parse(repair.text()).warnings(FigureKind.INNER_DIAMETER).isEmpty()));
    }

    private static List<DimensionRepair> of(String typed, FigureKind kind) {
        return DimensionRepair.of(typed, Optional.of(kind));
    }
}
