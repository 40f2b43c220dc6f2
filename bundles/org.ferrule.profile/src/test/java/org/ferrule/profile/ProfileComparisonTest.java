/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.profile.Compared.devices;
import static org.ferrule.profile.Compared.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.device.Parts.MarkerPart;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.profile.curve.Mark;
import org.ferrule.profile.curve.Reading;
import org.junit.jupiter.api.Test;

class ProfileComparisonTest {
    private static final SampleDevice SMALL = balloon("small", "0.85 mm", "0.6 mm");
    private static final SampleDevice LARGE = balloon("large", "1.1 mm", "0.7 mm");

    @Test
    void readsAllDiametersAtAStation() {
        List<DeviceReading> readings = devices(SMALL, LARGE).compare().valuesAt(length("10 mm"));
        assertEquals(length("0.85 mm"), known(readings.get(0).outer()).figure().centre());
        assertEquals(length("1.1 mm"), known(readings.get(1).outer()).figure().centre());
        assertEquals("balloon", known(readings.get(0).outer()).section());
        assertEquals("wire", readings.get(0).inner().get(0).lumen());
        assertEquals(length("0.016 in"), known(readings.get(0).inner().get(0).reading()).figure().centre());
        assertTrue(readings.get(0).withWire().isEmpty(), "the wire runs inside there");
    }

    @Test
    void proximalToThePortTheWireLiesBesideTheShaft() {
        DeviceReading reading = devices(SMALL, LARGE).compare().valuesAt(length("50 cm")).get(0);
        assertEquals(length("0.6 mm"), known(reading.outer()).figure().centre());
        assertEquals(length("0.6 mm").plus(length("0.014 in")),
                known(reading.withWire().orElseThrow()).figure().centre());
        assertTrue(reading.inner().isEmpty(), "the wire lumen ends at the port");
    }

    @Test
    void atAStepTheLargerOuterDiameterCounts() {
        DeviceReading reading = devices(SMALL, LARGE).compare().valuesAt(length("4 mm")).get(0);
        assertEquals(length("0.85 mm"), known(reading.outer()).figure().centre());
    }

    @Test
    void whatNobodyStatesIsUnknownAndBeyondTheEndIsNothing() {
        SampleDevice part = device("part", DeviceKind.MICROCATHETER).length("135 cm").section("tip", "0 mm", "1 cm",
                "0.6 mm");
        ProfileComparison comparison = devices(SMALL, part).compare();
        assertInstanceOf(Reading.Unknown.class, comparison.valuesAt(length("50 cm")).get(1).outer());
        assertInstanceOf(Reading.Beyond.class, comparison.valuesAt(length("140 cm")).get(1).outer());
    }

    @Test
    void figuresOfTheRuleSetAreSaidToBeAssumed() {
        ProfileComparison comparison = devices(SMALL, rod("stated", DeviceKind.MICROCATHETER, "135 cm", "0.8..0.9 mm"))
                .under(TestRules.usual()).compare();
        List<DeviceReading> readings = comparison.valuesAt(length("1 mm"));
        assertTrue(known(readings.get(0).outer()).assumed());
        assertEquals(length("0.44 mm"), known(readings.get(0).outer()).figure().high());
    }

    @Test
    void stationsCountFromTheLandmark() {
        ProfileComparison comparison = devices(SMALL, LARGE).from("exit port").compare();
        DeviceReading reading = comparison.valuesAt(length("24 cm").negated()).get(0);
        assertEquals(Optional.of(length("1 cm")), reading.fromTip());
        assertEquals("balloon", known(reading.outer()).section());
        assertEquals(length("25 cm").negated(), comparison.from());
    }

    @Test
    void aDeviceWithoutTheLandmarkHasNoCurvesButStaysInTheTable() {
        ProfileComparison comparison = devices(SMALL, rod("plain", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm"))
                .from("exit port").compare();
        assertTrue(comparison.devices().get(1).curves().isEmpty());
        assertInstanceOf(Reading.Unknown.class, comparison.valuesAt(length("1 cm")).get(1).outer());
        assertEquals(2, comparison.differences().rows().get(0).values().size());
    }

    @Test
    void marksArePortsMarkersAndRigidParts() {
        Parts parts = new Parts(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                List.of(new MarkerPart(length("5 mm"), Optional.of(length("1 mm")))), Optional.empty());
        SampleDevice marked = balloon("marked", "0.9 mm", "0.6 mm").section("ring", "30 mm", "34 mm", "0.8 mm").rigid()
                .parts(parts);
        List<Mark> marks = devices(marked, SMALL).compare().devices().get(0).curves().orElseThrow().marks();
        assertEquals(List.of(Mark.Kind.MARKER, Mark.Kind.RIGID, Mark.Kind.EXIT_PORT),
                marks.stream().map(Mark::kind).toList());
        assertEquals(length("6 mm"), marks.get(0).to());
        assertEquals(Optional.of(length("34 mm")), Landmark.parse("rigid end")
                .on(devices(marked, SMALL).compare().devices().get(0).read()));
        assertEquals(Optional.of(length("5 mm")), Landmark.parse("marker")
                .on(devices(marked, SMALL).compare().devices().get(0).read()));
    }

    @Test
    void marksAtAStationAreThoseThatLieThere() {
        SampleDevice marked = rod("marked", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm")
                .section("ring", "30 mm", "34 mm", "0.8 mm").rigid();
        ProfileComparison comparison = devices(marked, SMALL).compare();
        for (String inside : List.of("30 mm", "32 mm", "34 mm")) {
            assertEquals(1, comparison.valuesAt(length(inside)).get(0).marks().size(), inside);
        }
        for (String outside : List.of("29 mm", "35 mm")) {
            assertEquals(List.of(), comparison.valuesAt(length(outside)).get(0).marks(), outside);
        }
    }

    @Test
    void anExitPortIsALandmarkOnlyWhereItsPlaceIsStated() {
        SampleDevice hub = rod("hub", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm", "0.4 mm");
        assertEquals(Optional.empty(), devices(hub, SMALL).from("exit port").compare().devices().get(0).landmark());
        assertEquals(Optional.of(length("25 cm")),
                devices(hub, SMALL).from("exit port").compare().devices().get(1).landmark());
        SampleDevice two = balloon("two", "0.9 mm", "0.6 mm").lumen("second", Lumen.Use.WIRE, Lumen.Opening.SIDE_PORT,
                "0 mm", "12 cm").bore("0 mm", "12 cm", "0.4 mm");
        assertEquals(Optional.of(length("12 cm")),
                devices(two, SMALL).from("exit port").compare().devices().get(0).landmark(), "the most distal one");
        SampleDevice tube = device("tube", DeviceKind.GUIDE_EXTENSION).length("150 cm")
                .section("tube", "0 mm", "25 cm", "1.7 mm").section("rod", "25 cm", "150 cm", "0.5 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 mm", "25 cm")
                .bore("0 mm", "25 cm", "1.4 mm");
        assertEquals(Optional.of(length("25 cm")),
                devices(tube, SMALL).from("exit port").compare().devices().get(0).landmark(), "a collar");
    }

    @Test
    void largestPartIsWhereTheLargestDiameterBegins() {
        ProfileComparison comparison = devices(SMALL, LARGE).from("largest part").compare();
        assertEquals(Optional.of(length("4 mm")), comparison.devices().get(0).landmark());
    }

    @Test
    void firstContactIsWhereTheDeviceStops() {
        ProfileComparison comparison = devices(SMALL, LARGE).in(guide("guide", "1.0 mm")).compare();
        assertTrue(comparison.passages().get(0).stopsAt().isEmpty());
        assertEquals(Optional.of(length("4 mm")), comparison.passages().get(1).stopsAt());
    }

    @Test
    void worstCaseMeetsTheWallBeforeTheNominalOne() {
        SampleDevice doubtful = device("doubtful", DeviceKind.MICROCATHETER).length("135 cm")
                .section("tip", "0 mm", "5 mm", "0.95 mm ±0.1").section("shaft", "5 mm", "135 cm", "1.05 mm ±0.01");
        LumenPassage passage = devices(doubtful, SMALL).in(guide("guide", "1.0 mm")).compare().passages().get(0);
        assertEquals(Optional.of(length("0 mm")), passage.worstAt());
        assertEquals(Optional.of(length("5 mm")), passage.stopsAt());
    }

    @Test
    void aMissingFigureLeavesThePassageUnknown() {
        SampleDevice gap = device("gap", DeviceKind.MICROCATHETER).length("135 cm").section("shaft", "5 mm", "135 cm",
                "0.8 mm");
        LumenPassage passage = devices(gap, SMALL).in(guide("guide", "1.0 mm")).compare().passages().get(0);
        assertTrue(passage.isUnknown() && passage.stopsAt().isEmpty() && passage.worstAt().isEmpty());
    }

    @Test
    void twoToEightDevicesCanBeCompared() {
        assertEquals("2 to 8 devices can be compared, not 1",
                assertThrows(IllegalArgumentException.class, () -> devices(SMALL).compare()).getMessage());
        SampleDevice[] nine = IntStream.range(0, 9).mapToObj(i -> balloon("b" + i, "0.9 mm", "0.6 mm"))
                .toArray(SampleDevice[]::new);
        assertThrows(IllegalArgumentException.class, () -> devices(nine).compare());
    }

    @Test
    void landmarksAreReadByTheirWords() {
        for (String word : List.of("tip", "marker", "marker 2", "exit port", "largest part", "rigid end",
                "rigid end 3")) {
            assertEquals(word, Landmark.parse(word).word());
        }
        for (String word : List.of("", "tip 2", "marker 0", "hub", "2")) {
            assertThrows(IllegalArgumentException.class, () -> Landmark.parse(word), word);
        }
    }

    private static Reading.Known known(Reading reading) {
        return assertInstanceOf(Reading.Known.class, reading);
    }
}
