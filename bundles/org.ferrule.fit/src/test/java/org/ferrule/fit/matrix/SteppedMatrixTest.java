/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import static org.ferrule.fit.sample.SampleClaim.compatible;
import static org.ferrule.fit.sample.SampleClaim.largestDevice;
import static org.ferrule.fit.sample.SampleClaim.minimumLumen;
import static org.ferrule.fit.sample.SampleClaim.notCompatible;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.sample.Texts;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/**
 * Cells of lumens and devices that step, taper, or lack a figure, in every order, are the answers of the solver: each
 * column by itself, as many that are answered alike, and as one among others.
 */
class SteppedMatrixTest {
    private static final RuleSet RULES = TestRules.usual().rules();
    private static final FitSolver SOLVER = FitSolver.standard(List.of());

    private static SampleDevice bored(String... widths) {
        SampleDevice guide = device("g" + String.join("-", widths), DeviceKind.GUIDE_CATHETER).length("100 cm")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm");
        int part = 100 / widths.length;
        for (int i = 0; i < widths.length; i++) {
            String[] ends = widths[i].split(" to ");
            guide.taperedBore(part * i + " cm", part * (i + 1) + " cm", ends[0], ends[ends.length - 1]);
        }
        return guide;
    }

    private static SampleDevice stepped(DeviceKind kind, String... widths) {
        SampleDevice device = device("d" + String.join("-", widths), kind).length("120 cm");
        int part = 120 / widths.length;
        for (int i = 0; i < widths.length; i++) {
            String[] ends = widths[i].split(" to ");
            device.taper("part " + i, part * i + " cm", part * (i + 1) + " cm", ends[0], ends[ends.length - 1]);
        }
        return device;
    }

    private static List<SampleDevice> lumens() {
        return List.of(guide("g", "1 mm"), bored("1.5 mm", "1 mm"), bored("1 mm", "1.5 mm"),
                bored("1.5 mm", "1 mm", "1.2 mm"), bored("1.5 mm to 1 mm"), bored("1 mm to 1.5 mm"),
                bored("1.2 mm", "1.2 mm to 1 mm"), bored("0.9..1.1 mm", "1.2 mm"), bored("1.2 mm", "0.9..1.1 mm"),
                bored("1.2 mm", "1 mm min"), bored("1.2 mm", "?"), bored("?", "1 mm"),
                bored("1 mm", "1 mm to 1 mm", "1 mm"), bored("1.5 mm to 1.05 mm", "1.05 mm"),
                bored("1.05 mm", "1.5 mm to 1.05 mm"));
    }

    private static List<SampleDevice> devices() {
        DeviceKind micro = DeviceKind.MICROCATHETER;
        return List.of(stepped(micro, "0.9 mm"), stepped(micro, "0.96 mm"), stepped(micro, "1.1 mm"),
                stepped(micro, "0.8 mm", "0.97 mm"), stepped(micro, "0.97 mm", "0.8 mm"),
                stepped(micro, "0.8 mm", "1.1 mm"), stepped(micro, "1.1 mm", "0.8 mm"),
                stepped(micro, "0.6 mm", "0.8 mm", "1 mm"), stepped(micro, "0.8 mm to 1.1 mm"),
                stepped(micro, "1.1 mm to 0.8 mm"), stepped(micro, "0.9 mm", "0.9..1.1 mm"),
                stepped(micro, "1..1.2 mm", "0.9 mm"), stepped(micro, "0.9 mm", "1.2 mm max"),
                stepped(micro, "0.9 mm", "1..1.2 mm"),
                stepped(micro, "0.9 mm", "?"), stepped(micro, "?", "0.9 mm"),
                stepped(DeviceKind.GUIDEWIRE, "0.36 mm"), balloon("b", "0.85 mm", "0.6 mm").takesWire("0.36 mm"),
                device("none", micro).length("120 cm"), rod("short", micro, "90 cm", "0.9 mm"));
    }

    private static void assertSolved(List<SampleDevice> inner, Optional<Length> reach) {
        assertSolved(lumens(), "lumen", inner, Direction.TIP_FIRST, reach);
    }

    private static void assertSolved(List<SampleDevice> outer, String lumen, List<SampleDevice> inner,
            Direction direction, Optional<Length> reach) {
        List<MatrixLine> lines = outer.stream().map(SampleDevice::device)
                .map(d -> new MatrixLine(ReadDevice.of(d, RULES), d.lumen(lumen))).toList();
        MatrixQuestion question = new MatrixQuestion(lines, inner.stream().map(d -> ReadDevice.of(d.device(), RULES))
                .toList(), direction, reach, RULES, SOLVER);
        FitMatrix matrix = FitMatrix.solve(question, Progress.SILENT);
        for (int line = 0; line < lines.size(); line++) {
            for (int column = 0; column < inner.size(); column++) {
                assertEquals(FitCell.of(SOLVER.answer(question.question(line, column))), matrix.cell(line, column),
                        lines.get(line).device().device().id() + " and " + inner.get(column).device().id() + " to "
                                + reach);
            }
        }
    }

    private static List<Optional<Length>> reaches() {
        return List.of(Optional.empty(), Optional.of(Texts.length("10 cm")), Optional.of(Length.ZERO),
                Optional.of(Texts.length("-40 cm")), Optional.of(Texts.length("-60 cm")),
                Optional.of(Texts.length("-95 cm")));
    }

    @Test
    void eachColumnByItselfIsTheSingleAnswer() {
        for (Optional<Length> reach : reaches()) {
            devices().forEach(device -> assertSolved(List.of(device), reach));
        }
    }

    @Test
    void columnsThatAreAnsweredAlikeAreTheSingleAnswers() {
        List<SampleDevice> devices = devices();
        for (Optional<Length> reach : reaches()) {
            assertSolved(devices.subList(0, 3), reach);
            assertSolved(devices.subList(3, 7), reach);
            assertSolved(devices.subList(7, 11), reach);
        }
    }

    @Test
    void columnsAmongOthersAreTheSingleAnswers() {
        reaches().forEach(reach -> assertSolved(devices(), reach));
    }

    @Test
    void columnsOfSeveralTilesAreTheSingleAnswers() {
        List<SampleDevice> rods = IntStream.range(0, 70)
                .mapToObj(i -> rod("rod " + i, DeviceKind.MICROCATHETER, 60 + i + " cm", (50 + i) / 100.0 + " mm"))
                .toList();
        assertSolved(rods, Optional.of(Texts.length("-20 cm")));
        assertSolved(rods, Optional.empty());
    }

    private static SampleDevice micro(String length, String... widths) {
        SampleDevice micro = device("m" + length + String.join("-", widths), DeviceKind.MICROCATHETER).length(length)
                .lumen("wire", Lumen.Use.WIRE, Lumen.Opening.HUB, "0 mm", length);
        double part = Double.parseDouble(length.split(" ")[0]) / widths.length;
        for (int i = 0; i < widths.length; i++) {
            micro.bore(part * i + " cm", part * (i + 1) + " cm", widths[i]);
        }
        return micro;
    }

    private static SampleDevice wire(String length, String... widths) {
        SampleDevice wire = device("w" + length + String.join("-", widths), DeviceKind.GUIDEWIRE).length(length);
        double part = Double.parseDouble(length.split(" ")[0]) / widths.length;
        for (int i = 0; i < widths.length; i++) {
            String[] ends = widths[i].split(" to ");
            wire.taper("part " + i, part * i + " cm", part * (i + 1) + " cm", ends[0], ends[ends.length - 1]);
        }
        return wire;
    }

    /** Over the tail of a wire the far end leads, and what stays ahead does not enter. */
    @Test
    void lumensOverTheTailsOfWiresAreTheSingleAnswers() {
        List<SampleDevice> outer = List.of(micro("135 cm", "0.4 mm"), micro("135 cm", "0.4 mm", "0.5 mm"),
                micro("135 cm", "0.5 mm", "0.4 mm"), micro("135 cm", "0.45 mm", "?"), micro("170 cm", "0.4 mm"));
        List<SampleDevice> wires = List.of(wire("190 cm", "0.36 mm"), wire("190 cm", "0.3 mm", "0.39 mm"),
                wire("190 cm", "0.45 mm", "0.36 mm"), wire("190 cm", "0.36 mm", "0.45 mm"), wire("300 cm", "0.36 mm"),
                wire("190 cm", "0.3 mm to 0.42 mm"), wire("140 cm", "0.36 mm"), wire("190 cm", "?", "0.36 mm"),
                wire("190 cm", "0.36 mm").length("?"));
        for (Optional<Length> reach : List.<Optional<Length>>of(Optional.empty(), Optional.of(Texts.length("5 cm")),
                Optional.of(Texts.length("25 cm")))) {
            assertSolved(outer, "wire", wires, Direction.OVER_WIRE_TAIL, reach);
            wires.forEach(wire -> assertSolved(outer, "wire", List.of(wire), Direction.OVER_WIRE_TAIL, reach));
        }
    }

    /** Claims of either side, about sizes, diameters, devices and wires, that agree with the figures or do not. */
    @Test
    void whatIsClaimedIsHeardAsTheSolverHearsIt() {
        DeviceKind micro = DeviceKind.MICROCATHETER;
        List<SampleDevice> outer = List.of(guide("g", "1 mm"),
                guide("tight", "0.91 mm").claim(largestDevice("0.95 mm")),
                guide("no", "1 mm").claim(largestDevice("0.85 mm").kinds(micro)),
                guide("named", "1 mm").claim(notCompatible().devices("plain")));
        List<SampleDevice> inner = List.of(stepped(micro, "0.9 mm"),
                rod("plain", micro, "120 cm", "0.9 mm"),
                rod("claims", micro, "120 cm", "1.05 mm")
                        .claim(minimumLumen("0.9 mm").kinds(DeviceKind.GUIDE_CATHETER)),
                rod("more", micro, "120 cm", "0.9 mm").claim(minimumLumen("1.1 mm")),
                rod("in", micro, "120 cm", "0.9 mm").claim(minimumLumen("0.9 mm").covers(Phase.IN)),
                rod("out", micro, "120 cm", "0.9 mm").claim(minimumLumen("1.1 mm").covers(Phase.OUT)),
                rod("sized", micro, "120 cm", "0.98 mm").claim(compatible().sizes("6 Fr")),
                rod("friend", micro, "120 cm", "0.98 mm").claim(compatible().devices("tight")),
                rod("wired", micro, "120 cm", "0.98 mm").takesWire("0.36 mm")
                        .claim(minimumLumen("0.9 mm").wire("0.36 mm")),
                rod("other", micro, "120 cm", "0.98 mm").takesWire("0.46 mm")
                        .claim(minimumLumen("0.9 mm").wire("0.36 mm")));
        for (Optional<Length> reach : reaches()) {
            assertSolved(outer, "lumen", inner, Direction.TIP_FIRST, reach);
            inner.forEach(device -> assertSolved(outer, "lumen", List.of(device), Direction.TIP_FIRST, reach));
        }
    }
}
