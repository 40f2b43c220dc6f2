/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Circles agree with the published values in {@code shared/enclosing-circles.csv}, each with its source. */
class EnclosingCircleTableTest {
    private static final List<String> MARKS = List.of("seen", "library", "computed", "from memory", "common practice");
    private static final int MOST_DISCS = 16;

    @TestFactory
    Stream<DynamicTest> agreesWithPublishedValue() throws IOException {
        return SharedTable.rows("enclosing-circles.csv").stream()
                .filter(row -> row.get("radii").split(" ").length <= MOST_DISCS)
                .map(row -> DynamicTest.dynamicTest(row.get("id"), () -> check(row)));
    }

    private static void check(CSVRecord row) {
        List<Length> diameters = Stream.of(row.get("radii").split(" ")).map(EnclosingCircleTableTest::twice).toList();
        Enclosure enclosure = enclose(row.get("arrangement"), diameters);
        BigDecimal expected = new BigDecimal(row.get("enclosingRadius"));
        if (expected.scale() == 0) {
            Length diameter = Length.of(expected.multiply(BigDecimal.valueOf(2)), LengthUnit.MILLIMETRE);
            assertEquals(List.of(diameter, diameter), List.of(enclosure.lowerDiameter(), enclosure.upperDiameter()));
        }
        // Bounds are rounded to 0.3 nm; the discs of a ring, which are placed to 0.3 nm, add a little to that.
        double tolerance = Math.pow(10, -expected.scale()) / 2
                + (row.get("arrangement").startsWith("free") ? 2e-7 : 1e-6);
        assertTrue(enclosure.lowerDiameter().mm() / 2 <= expected.doubleValue() + tolerance);
        if (!row.get("arrangement").equals("free, best known")) {
            assertEquals(expected.doubleValue(), enclosure.lowerDiameter().mm() / 2, tolerance);
        }
        assertEquals(expected.doubleValue(), enclosure.upperDiameter().mm() / 2, tolerance);
    }

    /** Returns the diameter in mm of a radius such as 0.5 or 2/3. */
    private static Length twice(String radius) {
        String[] parts = radius.split("/");
        Length whole = Length.of(parts[0], LengthUnit.MILLIMETRE).times(2);
        return parts.length == 1 ? whole : whole.dividedBy(Long.parseLong(parts[1]));
    }

    private static Enclosure enclose(String arrangement, List<Length> diameters) {
        int last = diameters.size() - 1;
        return switch (arrangement) {
            case "free", "free, best known" -> EnclosingCircle.discs(diameters);
            case "ring" -> ring(diameters).enclosure();
            default -> ring(diameters.subList(0, last)).with(diameters.get(last));
        };
    }

    /** Places equal discs in a ring, each touching the next. */
    private static DiscSet ring(List<Length> diameters) {
        int n = diameters.size();
        double radius = diameters.get(0).mm() / 2 / Math.sin(Math.PI / n);
        List<DiscSet.Disc> discs = new ArrayList<>();
        IntStream.range(0, n).mapToDouble(i -> 2 * Math.PI * i / n).forEach(angle -> discs.add(new DiscSet.Disc(
                Length.ofMm(radius * Math.cos(angle)), Length.ofMm(radius * Math.sin(angle)), diameters.get(0))));
        return new DiscSet(discs);
    }

    @Test
    void namesSourceAndMarkOfEveryValue() throws IOException {
        for (CSVRecord row : SharedTable.rows("enclosing-circles.csv")) {
            assertFalse(row.get("source").isBlank(), row.get("id"));
            assertTrue(MARKS.contains(row.get("mark")), row.get("id"));
        }
    }
}
