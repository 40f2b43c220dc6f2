/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.table;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.profile.Compared.devices;
import static org.ferrule.profile.Compared.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.ShaftSection.AfterUse;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.profile.Landmark;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Stiffness;
import org.junit.jupiter.api.Test;

class DifferencesTest {
    private static final ProfileWords WORDS = ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final SampleDevice BALLOON = balloon("balloon", "0.85 mm", "0.6 mm");
    private static final SampleDevice CATHETER = rod("catheter", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm")
            .overTheWire("135 cm", "0.018 in");

    @Test
    void tellsProfilesAndLengths() {
        Differences table = devices(BALLOON, CATHETER).compare().differences();
        assertEquals(List.of("0.43 mm (assumed exact)", "0.90 mm (assumed exact)"),
                texts(table, Quantity.ENTRY_PROFILE));
        assertEquals(List.of("0.85 mm (assumed exact)", "\u2013"), texts(table, Quantity.CROSSING_PROFILE));
        assertEquals(List.of("0.85 mm (assumed exact), from 4.0 mm", "0.90 mm (assumed exact), from 0 cm"),
                texts(table, Quantity.LARGEST_PROFILE));
        assertEquals(List.of("0.96 mm (assumed exact), from 25.0 cm", "\u2013"),
                texts(table, Quantity.LARGEST_WITH_WIRE));
        assertEquals(List.of("142.0 cm", "135.0 cm"), texts(table, Quantity.EFFECTIVE_LENGTH));
        assertEquals(List.of("25.0 cm", "\u2013"), texts(table, Quantity.EXIT_PORT));
        assertEquals(Optional.of(length("7 cm")), table.row(Quantity.EFFECTIVE_LENGTH).orElseThrow().spread());
        assertTrue(table.row(Quantity.LONGEST_RIGID).isEmpty(), "no device has a rigid part");
    }

    /** 0.018 in less 0.014 in is 0.1016 mm; a clearance is rounded down. */
    @Test
    void tellsWhatAWireLeaves() {
        Differences table = devices(BALLOON, CATHETER).wire("0.014 in").compare().differences();
        assertEquals(List.of("0.05 mm (worst 0.05 mm)", "0.10 mm (worst 0.10 mm)"),
                texts(table, Quantity.LEFT_BESIDE_WIRE));
    }

    @Test
    void anUnknownPartLeavesTheLargestUnknown() {
        SampleDevice gap = device("gap", DeviceKind.MICROCATHETER).length("135 cm").section("tip", "0 mm", "1 cm",
                "0.6 mm");
        Differences table = devices(BALLOON, gap).compare().differences();
        assertEquals("unknown", texts(table, Quantity.LARGEST_PROFILE).get(1));
        assertEquals("0.60 mm (assumed exact)", texts(table, Quantity.ENTRY_PROFILE).get(1));
        assertTrue(table.row(Quantity.LARGEST_PROFILE).orElseThrow().spread().isEmpty());
    }

    /** A factor of three is common practice; exactly three is no step over three. */
    @Test
    void tellsStepsOfStiffnessOverThree() {
        assertEquals(List.of(1), jumps("10 N mm2", "31 N mm2", "93 N mm2"));
        assertEquals(List.of(), jumps("10 N mm2", "30 N mm2", "10 N mm2"));
        assertEquals(List.of(2), jumps("", "90 N mm2", "10 N mm2"));
    }

    private static List<Integer> jumps(String... stiffnesses) {
        Device device = stiff(stiffnesses);
        ReadDevice read = ReadDevice.of(device, TestRules.exact().rules());
        Differences table = ProfileComparison.of(List.of(read, read), Landmark.TIP, List.of(), Optional.empty(),
                TestRules.exact().rules()).differences();
        Value.Steps steps = assertInstanceOf(Value.Steps.class,
                table.row(Quantity.STIFFNESS_STEPS).orElseThrow().values().get(0));
        assertEquals(List.of(stiffnesses).contains(""), !steps.complete());
        return steps.steps().stream().map(step -> (int) Math.round(step.at().in(LengthUnit.CENTIMETRE))).toList();
    }

    private static Device stiff(String... stiffnesses) {
        List<ShaftSection> sections = new ArrayList<>();
        Contour round = new Contour.Round(Optional.of(Dimension.parse("0.9 mm")));
        for (int i = 0; i < stiffnesses.length; i++) {
            sections.add(new ShaftSection("part " + i, length("1 cm").times(i), length("1 cm").times(i + 1L), round,
                    round, round, round, AfterUse.UNCHANGED, false, false, SourceRef.NONE,
                    Stiffness.read(stiffnesses[i])));
        }
        return new Device("stiff", "stiff", DeviceKind.MICROCATHETER, "", Optional.empty(), Optional.empty(), sections,
                List.of(), false, List.of());
    }

    private static List<String> texts(Differences table, Quantity quantity) {
        return table.row(quantity).orElseThrow().values().stream().map(WORDS::value).toList();
    }
}
