/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart;

import static org.ferrule.chart.DeviceMaker.mm;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.AfterUseRule;
import org.ferrule.fit.rules.ClearanceRule;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.Span;

/** A small shelf of invented devices; figures in the ranges of common practice. */
public final class Shelf {
    private static final SourceRef PRACTICE = new SourceRef("Common practice", "", "");

    public static final RuleSet RULES = new RuleSet("Test rules", "1",
            List.of(span(FigureClass.INNER_DIAMETER, 0.02, 0.02), span(FigureClass.OUTER_DIAMETER, 0.03, 0.03),
                    span(FigureClass.CROSSING_PROFILE, 0.03, 0.08), span(FigureClass.WIRE_DIAMETER, 0.005, 0.005)),
            List.of(new ClearanceRule(Set.of(), Set.of(), mm(0.05), PRACTICE)),
            List.of(new AfterUseRule(Set.of(), new BigDecimal("1.05"), new BigDecimal("1.15"), new BigDecimal("1.30"),
                    PRACTICE)),
            Optional.of(mm(30)), Optional.empty());

    private Shelf() {
    }

    private static Span span(FigureClass figure, double below, double above) {
        return new Span(figure, Set.of(), mm(below), mm(above), PRACTICE);
    }

    public static Device guide(String size, String innerDiameter) {
        return new DeviceMaker("guide-" + size.charAt(0), "Halden guide " + size, DeviceKind.GUIDE_CATHETER, size)
                .length("100 cm").section("shaft", 0, 1000, size.charAt(0) + " Fr")
                .lumen("working", Lumen.Use.WORKING, Lumen.Opening.HUB, 0, 1000, innerDiameter).make();
    }

    public static Device extension() {
        return new DeviceMaker("extension", "Halden extension 6 Fr", DeviceKind.GUIDE_EXTENSION, "6 Fr")
                .length("150 cm").section("tube", 0, 250, "0.067 in").section("push rod", 250, 1500, "0.6 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, 0, 250, "0.057 in").make();
    }

    /** A rapid-exchange balloon with a wire beside its shaft proximal to 25 cm. */
    public static Device balloon(String id, String profile) {
        return new DeviceMaker(id, "Lutra balloon " + id, DeviceKind.BALLOON_CATHETER, "").length("142 cm")
                .takesWire("0.014 in").taper("tip", 0, 4, "0.42 mm", "0.60 mm").profile("balloon", 4, 19, profile, true)
                .section("distal shaft", 19, 280, "0.86 mm").section("hypotube", 280, 1420, "0.64 mm")
                .lumen("wire", Lumen.Use.WIRE, Lumen.Opening.SIDE_PORT, 0, 250, "0.016 in").make();
    }

    public static Device claimedStent(String minimumLumen) {
        return new DeviceMaker("stent", "Lutra stent 3.0 x 18", DeviceKind.STENT_SYSTEM, "3.0 x 18").length("140 cm")
                .takesWire("0.014 in").deploys().taper("tip", 0, 3, "0.45 mm", "0.7 mm")
                .profile("crimped stent", 3, 21, "1.09 mm", false).section("distal shaft", 21, 270, "0.90 mm")
                .section("hypotube", 270, 1400, "0.66 mm")
                .lumen("wire", Lumen.Use.WIRE, Lumen.Opening.SIDE_PORT, 0, 260, "0.017 in")
                .claim(Claim.Type.MINIMUM_LUMEN, minimumLumen, DeviceKind.GUIDE_CATHETER).make();
    }

    public static Device microcatheter() {
        return new DeviceMaker("micro", "Corvo microcatheter 135", DeviceKind.MICROCATHETER, "").length("135 cm")
                .takesWire("0.014 in").taper("tip", 0, 10, "1.4 Fr", "1.9 Fr")
                .section("distal shaft", 10, 400, "2.6 Fr")
                .section("proximal shaft", 400, 1350, "2.8 Fr max")
                .lumen("wire", Lumen.Use.WIRE, Lumen.Opening.HUB, 0, 1350, "0.017 in").make();
    }

    public static Device dualLumen() {
        return new DeviceMaker("dual", "Corvo dual 150", DeviceKind.DUAL_LUMEN_MICROCATHETER, "").length("150 cm")
                .takesWire("0.014 in").taper("tip", 0, 5, "1.5 Fr", "2.0 Fr")
                .oval("oval shaft", 5, 400, "1.10 mm", "0.80 mm")
                .section("shaft", 400, 1500, "2.9 Fr")
                .lumen("over the wire", Lumen.Use.WORKING, Lumen.Opening.HUB, 6, 1500, "0.017 in")
                .lumen("monorail", Lumen.Use.WIRE, Lumen.Opening.SIDE_PORT, 0, 200, "0.016 in").make();
    }

    public static Device burr() {
        return new DeviceMaker("burr", "Osmo burr 1.75", DeviceKind.ROTATIONAL_BURR, "1.75 mm").length("135 cm")
                .takesWire("0.009 in").rigid("burr", 0, 6, "1.75 mm").section("drive sheath", 6, 1350, "4.3 Fr")
                .lumen("wire", Lumen.Use.WIRE, Lumen.Opening.HUB, 0, 1350, "0.012 in").make();
    }

    public static Device unlabelled() {
        return new DeviceMaker("imaging", "Vedra imaging catheter", DeviceKind.IMAGING_CATHETER, "").length("135 cm")
                .takesWire("0.014 in").section("tip", 0, 20, "0.8 mm").section("window", 20, 160, "")
                .section("shaft", 160, 1350, "2.9 Fr").make();
    }

    public static Device wire() {
        return new DeviceMaker("wire", "Filo wire 300", DeviceKind.GUIDEWIRE, "").length("300 cm")
                .section("spring tip", 0, 30, "0.014 in").section("core", 30, 3000, "0.014 in").make();
    }

    public static FitQuestion question(Device outer, Device inner) {
        Lumen lumen = outer.mainLumen().orElseThrow();
        return new FitQuestion(ReadDevice.of(outer, RULES), lumen, ReadDevice.of(inner, RULES), Direction.TIP_FIRST,
                Optional.empty(), RULES);
    }

    public static FitQuestion overWire(Device outer, Device wire) {
        Lumen lumen = outer.wireLumen().orElseThrow();
        return new FitQuestion(ReadDevice.of(outer, RULES), lumen, ReadDevice.of(wire, RULES),
                Direction.OVER_WIRE_TAIL, Optional.empty(), RULES);
    }

    public static FitAnswer answer(FitQuestion question) {
        BenchResult seen = new BenchResult("extension", "", "burr", Optional.empty(), false, Set.of(), 3,
                new SourceRef("Made-up bench report", "1", "7"));
        return FitSolver.standard(List.of(seen)).answer(question);
    }
}
