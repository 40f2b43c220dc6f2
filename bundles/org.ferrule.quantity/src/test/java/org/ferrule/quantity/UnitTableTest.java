/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Conversions agree with the published values in {@code shared/units.csv}, each with its source. */
class UnitTableTest {
    private static final List<String> MARKS = List.of("seen", "library", "computed", "from memory", "common practice");

    @TestFactory
    Stream<DynamicTest> agreesWithPublishedValue() throws IOException {
        return SharedTable.rows("units.csv").stream()
                .map(row -> DynamicTest.dynamicTest(row.get("id"), () -> check(row)));
    }

    private static void check(CSVRecord row) {
        BigDecimal expected = new BigDecimal(row.get("expected"));
        String input = row.get("input") + " " + row.get("unit");
        RoundingMode rounding = row.get("quantity").endsWith("(last digit cut off)") ? RoundingMode.DOWN
                : RoundingMode.HALF_EVEN;
        BigDecimal actual = switch (row.get("quantity")) {
            case "pressure" -> pressure(input, row.get("expectedUnit"));
            case "disc area" -> discArea(input);
            default -> length(input, row.get("expectedUnit"));
        };
        assertEquals(expected, actual.setScale(expected.scale(), rounding), input);
    }

    private static BigDecimal length(String input, String unit) {
        LengthUnit target = LengthUnit.find(unit).orElseThrow();
        return Dimension.parse(input).label().in(target, 12, RoundingMode.HALF_EVEN);
    }

    private static BigDecimal pressure(String input, String unit) {
        return BigDecimal.valueOf(Pressure.parse(input).in(PressureUnit.find(unit).orElseThrow()));
    }

    private static BigDecimal discArea(String diameter) {
        double mm = Dimension.parse(diameter).label().mm();
        return BigDecimal.valueOf(Math.PI / 4 * mm * mm);
    }

    @Test
    void namesSourceAndMarkOfEveryValue() throws IOException {
        for (CSVRecord row : SharedTable.rows("units.csv")) {
            assertFalse(row.get("source").isBlank(), row.get("id"));
            assertTrue(MARKS.contains(row.get("mark")), row.get("id"));
        }
    }
}
