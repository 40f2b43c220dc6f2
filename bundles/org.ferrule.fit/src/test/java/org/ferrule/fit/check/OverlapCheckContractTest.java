/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleQuestion.passage;

import java.util.stream.Stream;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.sample.SampleQuestion;

class OverlapCheckContractTest extends FitCheckContract {

    @Override
    protected FitCheck check() {
        return new OverlapCheck();
    }

    @Override
    protected Stream<SampleQuestion> questionsThatLackAFigure() {
        return Stream
                .of(passage(device("x", GUIDE_EXTENSION).lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 mm",
                        "0 mm"), guide("g", "2 mm")).reach("10 cm"));
    }
}
