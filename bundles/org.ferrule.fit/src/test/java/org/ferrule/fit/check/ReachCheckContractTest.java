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

import org.ferrule.fit.sample.SampleQuestion;

class ReachCheckContractTest extends FitCheckContract {

    @Override
    protected FitCheck check() {
        return new ReachCheck();
    }

    @Override
    protected Stream<SampleQuestion> questionsThatLackAFigure() {
        return Stream.of(passage(device("m", MICROCATHETER), guide("g", "1 mm")).reach("10 cm"),
                passage(device("m", MICROCATHETER).section("tip", "0 cm", "110 cm", "0.9 mm"), guide("g", "1 mm"))
                        .reach("10 cm"));
    }
}
