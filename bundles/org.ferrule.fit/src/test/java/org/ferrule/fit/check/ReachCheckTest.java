/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.rules.Limits.Purpose;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

class ReachCheckTest {
    private static final TestRules RULES = TestRules.exact().allow(Purpose.HUB_AND_VALVE, "8 cm");

    private static Finding find(SampleDevice outer) {
        SampleDevice inner = rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm");
        return new ReachCheck().check(passage(inner, outer).under(RULES).reach("30 cm").question(), Phase.IN);
    }

    /** 135 - 100 - 8 leave 27 cm (common practice). */
    @Test
    void hubAndValveOfAGuideTakeTheirPart() {
        assertEquals(Verdict.TIGHT, find(guide("g", "2 mm")).verdict());
    }

    /** The valve of a sheath is part of its hub. */
    @Test
    void sheathsTakeNothing() {
        assertEquals(Finding.SILENT,
                find(device("s", DeviceKind.INTRODUCER_SHEATH).length("100 cm").working("100 cm", "2 mm")));
    }
}
