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
import java.util.stream.Stream;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.FitQuestion;

/** Questions of all sorts, for what must hold of every one. */
public final class SampleQuestions {
    private SampleQuestions() {
    }

    /** Questions with every verdict in both directions, with and without a reach, alone and beside others. */
    public static List<FitQuestion> various() {
        return Stream.concat(alone(), conditioned()).map(question -> question.under(TestRules.usual()).question())
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

    private static SampleDevice extension() {
        return device("x", DeviceKind.GUIDE_EXTENSION).length("150 cm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "0.056 in").section("tube", "0 cm", "25 cm", "0.067 in")
                .section("push rod", "25 cm", "150 cm", "0.4 mm");
    }
}
