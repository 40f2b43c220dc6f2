/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;

import java.util.stream.Stream;

import org.ferrule.fit.sample.SampleQuestion;

class PortCheckContractTest extends FitCheckContract {

    @Override
    protected FitCheck check() {
        return new PortCheck();
    }

    @Override
    protected Stream<SampleQuestion> questionsThatLackAFigure() {
        return Stream
                .of(passage(rod("b", BALLOON_CATHETER, "142 cm", "0.9 mm").sidePort("0 mm", "?"), guide("g", "1 mm"))
                        .reach("10 cm"));
    }
}
