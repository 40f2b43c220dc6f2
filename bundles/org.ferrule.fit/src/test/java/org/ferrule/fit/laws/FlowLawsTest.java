/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

import org.ferrule.fit.check.Finding;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.check.FlowCheck;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.FlowLeft;
import org.ferrule.fit.rules.Limits.FlowUse;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.junit.jupiter.api.Test;

/** What is put into a lumen never leaves more flow at best. */
class FlowLawsTest {
    private static final int CASES = 12;
    private final FitCheck check = new FlowCheck().inDetail();

    @Test
    void moreInTheLumenNeverLeavesMoreAtBest() {
        Cases.check(CASES, random -> {
            SampleQuestion question = question(random, 300 + random.nextInt(400));
            Optional<FlowLeft> before = left(question);
            Optional<FlowLeft> after = left(question.beside(
                    SampleDevice.rod("o", DeviceKind.MICROCATHETER, "135 cm", mm(100 + random.nextInt(400))), "3 cm"));
            before.ifPresent(b -> after.ifPresent(a -> assertTrue(a.high() <= b.high(), b + " became " + a)));
        });
    }

    @Test
    void thickerDeviceNeverLeavesMoreAtBest() {
        Cases.check(20 * CASES, random -> {
            int thickness = 300 + random.nextInt(800);
            Random again = new Random(random.nextLong());
            FlowLeft before = left(question(again, thickness)).orElseThrow();
            FlowLeft after = left(question(again, thickness + 1 + random.nextInt(300))).orElseThrow();
            assertTrue(after.high() <= before.high() && after.low() <= before.low(), before + " became " + after);
        });
    }

    @Test
    void quickCheckNeverSaysWhatTheDetailedOneDenies() {
        Cases.check(CASES, random -> {
            SampleQuestion question = question(random, 300 + random.nextInt(700)).beside(
                    SampleDevice.rod("o", DeviceKind.MICROCATHETER, "135 cm", mm(100 + random.nextInt(400))), "3 cm");
            Finding quick = new FlowCheck().check(question.question(), Phase.IN);
            Finding detailed = check.check(question.question(), Phase.IN);
            assertEquals(quick.verdict(), detailed.verdict());
            quick.reasons().forEach(reason -> assertTrue(
                    detailed.reasons().stream().anyMatch(r -> r.code() == reason.code()), detailed::toString));
        });
    }

    private static SampleQuestion question(Random random, int micrometres) {
        return passage(SampleDevice.rod("d", DeviceKind.MICROCATHETER, "135 cm", mm(micrometres)),
                SampleDevice.guide("g", "1.778 mm"))
                .under(TestRules.exact().leastFlow(FlowUse.CONTRAST, "0.3"));
    }

    private static String mm(int micrometres) {
        return micrometres / 1000 + "." + String.format(Locale.ROOT, "%03d", micrometres % 1000) + " mm";
    }

    private Optional<FlowLeft> left(SampleQuestion question) {
        List<FlowLeft> found = check.check(question.question(), Phase.IN).evidence().stream()
                .map(FlowLeft.class::cast).toList();
        return found.stream().findFirst();
    }
}
