/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleQuestion.passage;

import java.util.stream.Stream;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.sample.SampleQuestion;

class LengthCheckContractTest extends FitCheckContract {

    @Override
    protected FitCheck check() {
        return new LengthCheck();
    }

    @Override
    protected Stream<SampleQuestion> questionsThatLackAFigure() {
        return Stream.of(passage(device("m", MICROCATHETER), guide("g", "1 mm")).reach("10 cm"),
                passage(device("m", MICROCATHETER).length("long"), guide("g", "1 mm")).reach("10 cm"),
                passage(device("m", MICROCATHETER).length("135 cm"), device("g", DeviceKind.GUIDE_CATHETER)
                        .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 cm", "0 cm")).reach("10 cm"));
    }
}
