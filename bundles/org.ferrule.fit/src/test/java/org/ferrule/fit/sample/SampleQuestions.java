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

    /** Questions with every verdict in both directions, with and without a reach. */
    public static List<FitQuestion> various() {
        SampleDevice micro = rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm", "0.4 mm");
        return Stream
                .of(passage(micro, guide("g", "0.070 in")), passage(micro, guide("g", "0.92 mm")),
                        passage(micro, guide("g", "0.8 mm")).reach("20 cm"), passage(micro, guide("g", "?")),
                        passage(micro, guide("g", "1 mm")).reach("60 cm"), passage(micro, extension()),
                        passage(balloon("b", "0.85 mm", "0.6 mm").deploys(), guide("g", "0.96 mm")).reach("10 cm"),
                        passage(balloon("b", "0.85 mm", "0.6 mm").takesWire("?"), guide("g", "1.1 mm")),
                        passage(device("n", DeviceKind.SNARE), guide("g", "1.1 mm")).reach("10 cm"),
                        passage(rod("w", DeviceKind.GUIDEWIRE, "190 cm", "0.39 mm"), micro).overTail(),
                        passage(rod("w", DeviceKind.GUIDEWIRE, "140 cm", "0.3 mm"), micro).overTail().reach("9 cm"))
                .map(question -> question.under(TestRules.usual()).question()).toList();
    }

    private static SampleDevice extension() {
        return device("x", DeviceKind.GUIDE_EXTENSION).length("150 cm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "0.056 in");
    }
}
