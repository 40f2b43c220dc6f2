/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.device.DeviceKind.ROTATIONAL_BURR;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;

import java.util.stream.Stream;

import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;

class BendCheckContractTest extends FitCheckContract {

    @Override
    protected FitCheck check() {
        return new BendCheck();
    }

    @Override
    protected Stream<SampleQuestion> questionsThatLackAFigure() {
        return Stream.of(passage(burr("1.25 mm"), guide("g", "?")).reach("10 cm").bentLumen("60 mm"),
                passage(burr("?"), guide("g", "2 mm")).reach("10 cm").bentLumen("60 mm"),
                passage(burr("1.25 mm"), guide("g", "2 mm")).reach("10 cm").bentLumen("60 mm")
                        .beside(rod("m", MICROCATHETER, "135 cm", "?"), "5 cm"));
    }

    private static SampleDevice burr(String diameter) {
        return device("d", ROTATIONAL_BURR).length("135 cm").section("burr", "0 mm", "10 mm", diameter).rigid();
    }
}
