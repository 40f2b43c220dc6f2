/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.growth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import org.ferrule.balloon.Inflation;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.device.Parts.BalloonPart;
import org.ferrule.fit.device.Parts.ComplianceRow;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.profile.Compared;
import org.ferrule.profile.Drawn;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.PressureUnit;
import org.junit.jupiter.api.Test;

class GrowthTest {
    private static final ProfileWords WORDS = ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final Device SOFT = balloon("soft", "8 atm", "14 atm", "6 atm", "2.90 mm", "8 atm", "3.00 mm",
            "12 atm",
            "3.20 mm", "16 atm", "3.60 mm");
    private static final Device HARD = balloon("hard", "12 atm", "20 atm", "12 atm", "3.00 mm", "20 atm", "3.08 mm");

    @Test
    void nothingIsToldBeyondTheTableOrTheRatedBurstPressure() {
        BalloonGrowth soft = BalloonGrowth.of(SOFT);
        assertEquals(List.of(length("2.90 mm"), length("3.00 mm"), length("3.20 mm")),
                soft.printed().stream().map(Inflation.Point::diameter).toList());
        assertTrue(soft.at(Pressure.parse("15 atm")).isEmpty());
        assertTrue(soft.at(Pressure.parse("5 atm")).isEmpty());
        assertTrue(BalloonGrowth.of(HARD).at(Pressure.parse("21 atm")).isEmpty());
    }

    /** Half-way between 12 atm (3.20 mm) and 16 atm (3.60 mm): a straight line gives 3.40 mm. */
    @Test
    void theCurveEndsAtTheRatedBurstPressureBetweenRows() {
        BalloonGrowth soft = BalloonGrowth.of(SOFT);
        List<Inflation.Point> corners = soft.corners();
        assertEquals(length("3.40 mm"), corners.get(corners.size() - 1).diameter());
        assertFalse(soft.isPrinted(corners.get(corners.size() - 1).pascals()));
        assertEquals(Optional.of(length("3.00 mm")), soft.atNominal().map(Inflation.Point::diameter));
    }

    @Test
    void atAPrintedRowTheCurveIsThePrintedDiameter() {
        for (Device device : List.of(SOFT, HARD)) {
            BalloonGrowth growth = BalloonGrowth.of(device);
            device.parts().balloon().orElseThrow().compliance()
                    .forEach(row -> growth.at(row.pressure())
                            .ifPresent(point -> assertEquals(row.diameter().label(), point.diameter())));
        }
    }

    @Test
    void whatHasNoTableSaysWhy() {
        assertEquals(Optional.of(BalloonGrowth.Refusal.NO_BALLOON), BalloonGrowth.of(
                SampleDevice.rod("rod", DeviceKind.GUIDEWIRE, "190 cm", "0.014 in").device()).refusal());
        assertEquals(Optional.of(BalloonGrowth.Refusal.NO_TABLE),
                BalloonGrowth.of(balloon("bare", "8 atm", "14 atm")).refusal());
        BalloonGrowth falling = BalloonGrowth
                .of(balloon("falling", "8 atm", "14 atm", "6 atm", "3 mm", "8 atm", "2 mm"));
        assertEquals(Optional.of(BalloonGrowth.Refusal.CONTRADICTORY_TABLE), falling.refusal());
        assertTrue(falling.detail().contains("8 atm -> 2 mm"), falling.detail());
        assertEquals(Optional.of(BalloonGrowth.Refusal.BEYOND_RATED_BURST),
                BalloonGrowth.of(balloon("beyond", "8 atm", "5 atm", "6 atm", "3 mm")).refusal());
    }

    @Test
    void pressuresOfDifferentUnitsComeInOrder() {
        GrowthComparison growth = GrowthComparison.of(List.of(SOFT, HARD,
                balloon("bar", "10 bar", "15 bar", "10 bar", "3 mm")));
        assertEquals(PressureUnit.ATMOSPHERE, growth.unit());
        List<String> pressures = growth.pressures().stream().map(Pressure::text).toList();
        assertEquals(List.of("6 atm", "8 atm", "10 bar", "12 atm", "14 atm", "15 bar", "16 atm", "20 atm"), pressures);
        GrowthWords words = new GrowthWords(growth, WORDS);
        assertEquals("9.9 atm", words.pressure(Pressure.parse("10 bar")));
        assertEquals("3.00 mm", words.at(0, Pressure.parse("8 atm")));
        assertEquals("3.10 mm~", words.at(0, Pressure.parse("10 atm")));
        assertEquals("\u2013", words.at(1, Pressure.parse("10 atm")));
    }

    @Test
    void theUnitIsThatOfMostRows() {
        Device bar = balloon("bar", "10 bar", "15 bar", "9 bar", "2.9 mm", "10 bar", "3 mm", "12 bar", "3.1 mm");
        assertEquals(PressureUnit.BAR, GrowthComparison.of(List.of(bar, HARD)).unit());
        assertEquals(PressureUnit.ATMOSPHERE, GrowthComparison.of(List.of(bar, SOFT, HARD)).unit());
        assertEquals(PressureUnit.ATMOSPHERE,
                GrowthComparison.of(List.of(balloon("bare", "8 bar", "14 bar"))).unit(), "without any row");
        assertEquals(List.of(), GrowthComparison.of(List.of(balloon("bare", "8 bar", "14 bar"))).pressures(),
                "pressures of what has no curve are not asked");
    }

    @Test
    void printedRowsAndMarksCanBeFoundInThePlot() {
        GrowthComparison growth = GrowthComparison.of(List.of(SOFT, HARD));
        GrowthPlot plot = new GrowthPlot(growth, WORDS, 200, 130);
        Picture picture = plot.picture();
        Point row = new Point(plot.area().x(12), plot.area().y(3.20));
        assertTrue(picture.groupsAt(row, 0.2).stream().anyMatch(group -> group.frame().id().equals(
                Optional.of("row:soft:2"))));
        List<String> ids = Drawn.ids(picture);
        assertTrue(ids.containsAll(List.of("nominal:soft", "rated:soft", "nominal:hard", "rated:hard")),
                ids.toString());
        assertFalse(ids.contains("row:soft:3"), "the row beyond the rated burst pressure is not drawn");
    }

    @Test
    void whatIsMissingIsSaidBelowThePlot() {
        GrowthComparison growth = GrowthComparison.of(List.of(SOFT, balloon("bare", "8 atm", "14 atm")));
        String texts = String.join(" ", Drawn.texts(GrowthPlot.picture(growth, WORDS, 200, 130)));
        assertTrue(texts.contains("B bare: no curve, its papers have no table that can be read"), texts);
    }

    @Test
    void oneToEightBalloons() {
        assertThrows(IllegalArgumentException.class, () -> GrowthComparison.of(List.of()));
        assertEquals(8, GrowthComparison.of(Collections.nCopies(8, SOFT)).balloons().size());
        assertThrows(IllegalArgumentException.class, () -> GrowthComparison.of(Collections.nCopies(9, SOFT)));
    }

    private static Length length(String text) {
        return Compared.length(text);
    }

    static Device balloon(String id, String nominal, String rated, String... rows) {
        return balloon(id, Optional.of(nominal), Optional.of(rated), rows);
    }

    static Device balloon(String id, Optional<String> nominal, Optional<String> rated, String... rows) {
        List<ComplianceRow> table = new ArrayList<>();
        for (int i = 0; i < rows.length; i += 2) {
            table.add(new ComplianceRow(Pressure.parse(rows[i]), Dimension.parse(rows[i + 1])));
        }
        BalloonPart balloon = new BalloonPart("balloon", Optional.empty(), Optional.empty(),
                nominal.map(Pressure::parse), rated.map(Pressure::parse), table);
        return SampleDevice.device(id, DeviceKind.BALLOON_CATHETER).parts(new Parts(Optional.of(balloon),
                Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty())).device();
    }
}
