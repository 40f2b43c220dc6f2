/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.sample;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.FitQuestion;

/** Questions of all sorts, for what must hold of every one. */
public final class SampleQuestions {
    private SampleQuestions() {
    }

    /** Questions with every verdict in both directions, with and without a reach, alone and beside others. */
    public static List<FitQuestion> various() {
        return Stream.concat(alone(), conditioned()).map(question -> question.under(TestRules.full()).question())
                .toList();
    }

    private static Stream<SampleQuestion> alone() {
        SampleDevice micro = rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm", "0.4 mm");
        return Stream
                .of(passage(micro, guide("g", "0.070 in")), passage(micro, guide("g", "0.92 mm")),
                        passage(micro, guide("g", "0.8 mm")).reach("20 cm"), passage(micro, guide("g", "?")),
                        passage(micro, guide("g", "1 mm")).reach("60 cm"), passage(micro, extension()),
                        passage(balloon("b", "0.85 mm", "0.6 mm").deploys(), guide("g", "0.96 mm")).reach("10 cm"),
                        passage(balloon("b", "0.85 mm", "0.6 mm").takesWire("?"), guide("g", "1.1 mm")),
                        passage(device("n", DeviceKind.SNARE), guide("g", "1.1 mm")).reach("10 cm"),
                        passage(micro, guide("g", "1 mm")).reach("30 cm").wire("0.014 in").bentLumen("40 mm"),
                        passage(burr(), guide("g", "0.070 in")).reach("10 cm").bentLumen("20 mm").bend(vessel("10 mm")),
                        passage(burr(), guide("g", "0.070 in")).reach("10 cm").bentLumen("60 mm"),
                        passage(burr(), guide("g", "?")).reach("10 cm").bentLumen("60 mm"),
                        passage(extension(), guide("g", "0.070 in")).reach("20 cm"),
                        passage(balloon("b", "0.85 mm", "0.6 mm"), guide("g", "0.070 in")).reach("30 cm"),
                        passage(imaging(), guide("g", "0.070 in")).reach("10 cm"),
                        passage(rod("w", DeviceKind.GUIDEWIRE, "190 cm", "0.39 mm"), micro).overTail(),
                        passage(rod("w", DeviceKind.GUIDEWIRE, "140 cm", "0.3 mm"), micro).overTail().reach("9 cm"));
    }

    private static Stream<SampleQuestion> conditioned() {
        SampleDevice micro = rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm", "0.4 mm");
        SampleDevice balloon = balloon("b", "0.85 mm", "0.6 mm").deploys();
        SampleDevice wire = rod("w", DeviceKind.GUIDEWIRE, "190 cm", "0.36 mm");
        return Stream.of(passage(micro, guide("g", "0.070 in")).beside(wire, "10 cm"),
                passage(micro, guide("g", "0.070 in")).beside(balloon, "5 cm").beside(wire, "10 cm"),
                passage(balloon, guide("g", "0.070 in")).beside(balloon, "5 cm").reach("5 cm"),
                passage(balloon, guide("g", "0.070 in")).besideUsed(balloon, "-5 cm").afterInflation(),
                passage(micro, guide("g", "0.070 in")).beside(rod("u", DeviceKind.OTHER, "135 cm", "?"), "0 cm"),
                passage(micro, guide("g", "0.070 in")).beside(rod("s", DeviceKind.OTHER, "60 cm", "0.2 mm"), "0 cm"),
                passage(micro, guide("g", "0.070 in")).through(extension(), "5 cm").reach("10 cm"),
                passage(micro, guide("g", "0.058 in")).through(extension(), "-5 cm").beside(wire, "10 cm"));
    }

    private static SampleDevice burr() {
        return device("d", DeviceKind.ROTATIONAL_BURR).length("135 cm").section("burr", "2 mm", "12 mm", "1.25 mm")
                .rigid()
                .section("nose", "0 mm", "2 mm", "0.5 mm").section("drive sheath", "12 mm", "135 cm", "1.4 mm");
    }

    private static Bend vessel(String radius) {
        return new Bend(Bend.Where.VESSEL, Texts.length(radius), Optional.empty(), Optional.of(Texts.length("3 mm")));
    }

    private static SampleDevice imaging() {
        return rod("i", DeviceKind.IMAGING_CATHETER, "135 cm", "0.9 mm").parts(new Parts(Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.of(Texts.length("20 mm")), List.of(), Optional.empty()));
    }

    private static SampleDevice extension() {
        return device("x", DeviceKind.GUIDE_EXTENSION).length("150 cm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "0.056 in").section("tube", "0 cm", "25 cm", "0.067 in")
                .section("push rod", "25 cm", "150 cm", "0.4 mm");
    }
}
