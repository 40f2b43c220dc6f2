/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.check;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_EXTENSION;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.rules.Limits.Purpose;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.junit.jupiter.api.Test;

/** A matrix asks a check only where that may find something; so a check says no wherever it surely finds nothing. */
class ConcernsTest {
    private static final SampleDevice GUIDE = guide("g", "2 mm");
    private static final SampleDevice MICRO = rod("m", MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm",
            "0.4 mm");
    private static final SampleDevice WIRE = rod("w", GUIDEWIRE, "190 cm", "0.36 mm");

    private static void assertConcerned(FitCheck check, SampleQuestion question) {
        assertTrue(check.concerns(terms(question)) && check.concerns(terms(question), question.question().inner()));
    }

    /** Neither about that device nor, if so told, about any. */
    private static void assertNotConcerned(FitCheck check, boolean aboutOthers, SampleQuestion question) {
        assertTrue(check.concerns(terms(question)) == aboutOthers);
        assertFalse(check.concerns(terms(question), question.question().inner()));
    }

    private static Terms terms(SampleQuestion asked) {
        FitQuestion question = asked.question();
        return new Terms(question.direction(), question.reach(), question.conditions(), question.rules());
    }

    private static SampleQuestion overTail() {
        return passage(WIRE, MICRO).overTail().reach("10 cm").under(TestRules.full());
    }

    @Test
    void bendsConcernRigidParts() {
        SampleDevice rigid = rod("d", MICROCATHETER, "135 cm", "0.9 mm").rigid();
        assertConcerned(new BendCheck(), passage(rigid, GUIDE).bentLumen("20 mm"));
        assertNotConcerned(new BendCheck(), true, passage(MICRO, GUIDE).bentLumen("20 mm"));
        assertNotConcerned(new BendCheck(), false, passage(rigid, GUIDE));
        assertNotConcerned(new BendCheck(), false, passage(WIRE, MICRO).overTail().bentLumen("20 mm"));
    }

    @Test
    void chancesConcernStatedDeviations() {
        SampleDevice before = rod("d", MICROCATHETER, "135 cm", "0.9 mm sd 0.01");
        SampleDevice after = device("d", BALLOON_CATHETER).length("135 cm").folded("balloon", "0 cm", "135 cm",
                "0.9 mm",
                "1 mm sd 0.01");
        TestRules rules = TestRules.usual();
        assertConcerned(new ChanceCheck(), passage(before, GUIDE).under(rules));
        assertConcerned(new ChanceCheck(), passage(after, GUIDE).under(rules));
        assertNotConcerned(new ChanceCheck(), true, passage(MICRO, GUIDE).under(rules));
        assertNotConcerned(new ChanceCheck(), true, passage(device("d", MICROCATHETER).length("135 cm")
                .taper("tip", "0 cm", "135 cm", "0.9 mm sd 0.01", "1 mm"), GUIDE).under(rules));
        assertNotConcerned(new ChanceCheck(), false, passage(before, GUIDE).beside(WIRE, "5 cm").under(rules));
        assertNotConcerned(new ChanceCheck(), false, overTail());
    }

    @Test
    void exchangeConcernsDevicesOverAWireOfKnownLength() {
        assertConcerned(new ExchangeCheck(), passage(MICRO, GUIDE).over(WIRE).reach("10 cm").under(TestRules.full()));
        assertNotConcerned(new ExchangeCheck(), true, passage(MICRO, GUIDE).reach("10 cm").under(TestRules.full()));
        assertNotConcerned(new ExchangeCheck(), true, passage(MICRO, GUIDE).over(device("w", GUIDEWIRE)
                .section("wire", "0 cm", "190 cm", "0.36 mm")).reach("10 cm").under(TestRules.full()));
        assertNotConcerned(new ExchangeCheck(), true, passage(balloon("b", "0.8 mm", "0.6 mm"), GUIDE).over(WIRE)
                .reach("10 cm").under(TestRules.full()));
        assertNotConcerned(new ExchangeCheck(), false, passage(MICRO, GUIDE).over(WIRE).under(TestRules.full()));
        assertNotConcerned(new ExchangeCheck(), false, passage(MICRO, GUIDE).over(WIRE).reach("10 cm"));
        assertNotConcerned(new ExchangeCheck(), false, overTail());
    }

    @Test
    void portsConcernAReachBeyondThem() {
        SampleDevice balloon = balloon("b", "0.8 mm", "0.6 mm");
        assertConcerned(new PortCheck(), passage(balloon, GUIDE).reach("26 cm"));
        assertConcerned(new PortCheck(), passage(rod("b", BALLOON_CATHETER, "142 cm", "0.9 mm").sidePort("0 mm", "?"),
                GUIDE).reach("1 cm"));
        assertNotConcerned(new PortCheck(), true, passage(balloon, GUIDE).reach("25 cm"));
        assertNotConcerned(new PortCheck(), true, passage(MICRO, GUIDE).reach("26 cm"));
        assertNotConcerned(new PortCheck(), false, passage(balloon, GUIDE));
        assertNotConcerned(new PortCheck(), false, overTail());
    }

    @Test
    void hubAndValveConcernAReachUnderAnAllowance() {
        TestRules valve = TestRules.exact().allow(Purpose.HUB_AND_VALVE, "8 cm");
        assertConcerned(new ReachCheck(), passage(MICRO, GUIDE).reach("10 cm").under(valve));
        assertNotConcerned(new ReachCheck(), false, passage(MICRO, GUIDE).under(valve));
        assertNotConcerned(new ReachCheck(), false, passage(MICRO, GUIDE).reach("10 cm"));
        assertNotConcerned(new ReachCheck(), false, overTail());
    }

    @Test
    void overlapsConcernExtensionsThatAreToReachOrToBePassed() {
        SampleDevice extension = device("x", GUIDE_EXTENSION).length("150 cm")
                .section("tube", "0 cm", "25 cm", "1.7 mm")
                .section("rod", "25 cm", "150 cm", "0.4 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.5 mm");
        assertConcerned(new OverlapCheck(), passage(extension, GUIDE).reach("10 cm"));
        assertConcerned(new OverlapCheck(), passage(MICRO, GUIDE).through(extension, "5 cm"));
        assertNotConcerned(new OverlapCheck(), true, passage(MICRO, GUIDE).reach("10 cm"));
        assertNotConcerned(new OverlapCheck(), false, passage(extension, GUIDE));
        assertNotConcerned(new OverlapCheck(), false, overTail());
    }
}
