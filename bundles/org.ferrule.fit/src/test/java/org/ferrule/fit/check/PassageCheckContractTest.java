/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;

import java.util.stream.Stream;

import org.ferrule.fit.sample.SampleQuestion;

class PassageCheckContractTest extends FitCheckContract {

    @Override
    protected FitCheck check() {
        return new PassageCheck();
    }

    @Override
    protected Stream<SampleQuestion> questionsThatLackAFigure() {
        return Stream.of(passage(rod("m", MICROCATHETER, "135 cm", "?"), guide("g", "2 mm")),
                passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm"), guide("g", "?")),
                passage(rod("m", MICROCATHETER, "135 cm", "0.9 mm").length("?"), guide("g", "2 mm")),
                passage(balloon("b", "0.8 mm", "0.6 mm").takesWire("?"), guide("g", "2 mm")),
                passage(device("m", MICROCATHETER).length("135 cm"), guide("g", "2 mm")));
    }
}
