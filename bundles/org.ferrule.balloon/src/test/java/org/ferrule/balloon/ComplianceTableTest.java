/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.balloon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.quicktheories.QuickTheory.qt;
import static org.quicktheories.generators.SourceDSL.integers;
import static org.quicktheories.generators.SourceDSL.lists;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.ferrule.balloon.Inflation.Point;
import org.ferrule.balloon.Inflation.Refusal;
import org.ferrule.balloon.Inflation.Refused;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.PressureUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quicktheories.QuickTheory;

/** Tables as printed; growth of a semi-compliant balloon from nominal to rated burst is common practice. */
class ComplianceTableTest {
    private static final ComplianceTable TABLE = table("14 atm", "6 atm 2.90 mm", "8 atm 3.00 mm", "10 atm 3.05 mm",
            "14 atm 3.15 mm", "16 atm 3.20 mm");

    @ParameterizedTest
    @CsvSource({ "6 atm, 2.90 mm", "7 atm, 2.95 mm", "8 atm, 3.00 mm", "11 atm, 3.075 mm", "14 atm, 3.15 mm",
        "8.106 bar, 3.00 mm", "1418.55 kPa, 3.15 mm" })
    void readsBetweenRows(String pressure, String diameter) {
        Point point = assertInstanceOf(Point.class, TABLE.diameterAt(Pressure.parse(pressure)));
        assertEquals(Dimension.parse(diameter).label(), point.diameter());
        assertEquals(Pressure.parse(pressure).pascals(), point.pascals());
    }

    @ParameterizedTest
    @CsvSource({ "2.90 mm, 6", "2.95 mm, 7", "3.00 mm, 8", "3.075 mm, 11", "3.15 mm, 14" })
    void tellsThePressureForADiameter(String diameter, double atm) {
        Point point = assertInstanceOf(Point.class, TABLE.pressureFor(Dimension.parse(diameter).label()));
        assertEquals(atm, point.in(PressureUnit.ATMOSPHERE), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({ "5.9 atm, BELOW_TABLE, 6 atm", "14.1 atm, BEYOND_RATED_BURST, 14 atm",
        "16 atm, BEYOND_RATED_BURST, 14 atm", "40 atm, BEYOND_RATED_BURST, 14 atm", "0 atm, BELOW_TABLE, 6 atm" })
    void refusesPressuresThatTheTableSaysNothingOf(String pressure, Refusal code, String bound) {
        assertEquals(new Refused(code, pressure, bound), TABLE.diameterAt(Pressure.parse(pressure)));
    }

    @ParameterizedTest
    @CsvSource({ "2.89 mm, BELOW_TABLE, 2.90 mm", "3.16 mm, BEYOND_RATED_BURST, 14 atm",
        "3.2 mm, BEYOND_RATED_BURST, 14 atm", "3.3 mm, BEYOND_RATED_BURST, 14 atm" })
    void refusesDiametersThatTheTableSaysNothingOf(String diameter, Refusal code, String bound) {
        assertEquals(new Refused(code, diameter, bound), TABLE.pressureFor(Dimension.parse(diameter).label()));
    }

    @Test
    void stopsAtTheLastRowWhereNoRatedBurstIsKnown() {
        ComplianceTable open = table(null, "6 atm 2.90 mm", "8 atm 3.00 mm");
        assertEquals(new Refused(Refusal.ABOVE_TABLE, "8.01 atm", "8 atm"),
                open.diameterAt(Pressure.parse("8.01 atm")));
        assertEquals(new Refused(Refusal.ABOVE_TABLE, "3.01 mm", "3.00 mm"),
                open.pressureFor(Dimension.parse("3.01 mm").label()));
    }

    @Test
    void doesNotGoFromTheLastRowToTheRatedBurst() {
        ComplianceTable shorter = table("14 atm", "6 atm 2.90 mm", "8 atm 3.00 mm");
        assertEquals(new Refused(Refusal.ABOVE_TABLE, "12 atm", "8 atm"), shorter.diameterAt(Pressure.parse("12 atm")));
        assertEquals(new Refused(Refusal.ABOVE_TABLE, "3.1 mm", "3.00 mm"),
                shorter.pressureFor(Dimension.parse("3.1 mm").label()));
    }

    @Test
    void takesTheLowestPressureWhereTheDiameterStandsStill() {
        ComplianceTable flat = table(null, "6 atm 3.0 mm", "8 atm 3.0 mm", "10 atm 3.1 mm");
        Point point = assertInstanceOf(Point.class, flat.pressureFor(Dimension.parse("3.0 mm").label()));
        assertEquals(6, point.in(PressureUnit.ATMOSPHERE), 1e-12);
        assertEquals(Dimension.parse("3.0 mm").label(),
                assertInstanceOf(Point.class, flat.diameterAt(Pressure.parse("7 atm"))).diameter());
    }

    @Test
    void answersFromASingleRow() {
        ComplianceTable single = table(null, "8 atm 3.0 mm");
        assertInstanceOf(Point.class, single.diameterAt(Pressure.parse("8 atm")));
        assertInstanceOf(Point.class, single.pressureFor(Dimension.parse("3 mm").label()));
    }

    @Test
    void roundsTheDiameterUpAndThePressureDown() {
        ComplianceTable third = table(null, "6 atm 3.0 mm", "9 atm 3.000001 mm");
        Point point = assertInstanceOf(Point.class, third.diameterAt(Pressure.parse("6.001 atm")));
        assertEquals(new Length(9_000_001), point.diameter());
        Point back = assertInstanceOf(Point.class, third.pressureFor(point.diameter()));
        assertEquals(new BigDecimal("709275"), back.pascals().stripTrailingZeros());
        ComplianceTable eleventh = table(null, "6 atm 3.0 mm", "7 atm 3.11 mm");
        Point down = assertInstanceOf(Point.class, eleventh.pressureFor(Dimension.parse("3.01 mm").label()));
        BigDecimal exactTimesEleven = new BigDecimal(101325 * 67);
        assertTrue(down.pascals().multiply(new BigDecimal(11)).compareTo(exactTimesEleven) < 0);
    }

    @Test
    void namesTheRowsThatAreOutOfOrder() {
        assertNames(() -> table(null, "6 atm 2.9 mm", "8 atm 3.0 mm", "8 atm 3.1 mm"), "pressures",
                "row 2 (8 atm -> 3.0 mm), row 3 (8 atm -> 3.1 mm)");
        assertNames(() -> table(null, "6 atm 2.9 mm", "8 atm 2.8 mm"), "diameters",
                "row 1 (6 atm -> 2.9 mm), row 2 (8 atm -> 2.8 mm)");
    }

    @Test
    void refusesWhatCannotBeRead() {
        assertNames(() -> new ComplianceTable(List.of(), Optional.empty()), "at least one row");
        assertNames(() -> new ComplianceTable.Row(Pressure.lenient("8"), Dimension.parse("3 mm")), "\"8\"");
        assertNames(() -> new ComplianceTable.Row(Pressure.parse("8 atm"), Dimension.lenient("3")), "\"3\"");
        assertNames(() -> new ComplianceTable(TABLE.rows(), Optional.of(Pressure.lenient("x"))), "\"x\"");
        assertNames(() -> TABLE.diameterAt(Pressure.lenient("y")), "\"y\"");
        assertEquals(Optional.of(Pressure.parse("14 atm")), TABLE.ratedBurst());
    }

    @Test
    void pressureForTheDiameterAtAPressureIsThatPressure() {
        laws().forAll(lists().of(integers().between(1, 300)).ofSizeBetween(1, 8), integers().between(0, 1000))
                .check((steps, place) -> {
                    ComplianceTable table = rising(steps);
                    double atm = 6 + (table.rows().size() - 1) * place / 1000.0;
                    Pressure pressure = Pressure.parse(BigDecimal.valueOf(atm).toPlainString() + " atm");
                    Length diameter = ((Point) table.diameterAt(pressure)).diameter();
                    Point back = (Point) table.pressureFor(diameter);
                    return Math.abs(back.in(PressureUnit.ATMOSPHERE) - atm) < 1e-3;
                });
    }

    private static ComplianceTable rising(List<Integer> steps) {
        List<ComplianceTable.Row> rows = new ArrayList<>();
        Length diameter = Length.of("2.5", LengthUnit.MILLIMETRE);
        for (int i = 0; i <= steps.size(); i++) {
            rows.add(new ComplianceTable.Row(Pressure.parse(6 + i + " atm"), Dimension.of(diameter,
                    LengthUnit.MILLIMETRE)));
            diameter = diameter.plus(new Length(3_000L * steps.get(Math.min(i, steps.size() - 1))));
        }
        return new ComplianceTable(rows, Optional.empty());
    }

    private static QuickTheory laws() {
        return System.getProperty("QT_SEED") == null ? qt().withFixedSeed(20261125) : qt();
    }

    private static void assertNames(Runnable refused, String... parts) {
        Exception exception = assertThrows(IllegalArgumentException.class, refused::run);
        Arrays.stream(parts).forEach(part -> assertTrue(exception.getMessage().contains(part), exception::getMessage));
    }

    private static ComplianceTable table(String rated, String... rows) {
        return new ComplianceTable(Arrays.stream(rows).map(row -> row.split(" ", 3))
                .map(words -> new ComplianceTable.Row(Pressure.parse(words[0] + " " + words[1]),
                        Dimension.parse(words[2])))
                .toList(), Optional.ofNullable(rated).map(Pressure::parse));
    }
}
