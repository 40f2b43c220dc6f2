/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.verdict.ReasonCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pairs of the demo that were made to be missing something, stated only, or contradictory; worked out by hand. */
class DemoVerdictsTest {
    private static final Catalogue CATALOGUE = DemoDocuments.catalogue();
    private static final RuleSet RULES = RuleTranslator.translate(DemoDocuments.rules());
    private static final FitSolver SOLVER = FitSolver
            .with(Extensions.ofClassPath(DemoVerdictsTest.class.getClassLoader()).checks(), CATALOGUE.bench());

    @ParameterizedTest(name = "{1} in {0}: {2}")
    @CsvSource({
        "kes-guide-6fr-right-100, dun-sc-350-15, fits by claim",
        "pel-extension-6fr, dun-sc-350-15, unknown by geometry",
        "pel-extension-6fr, san-stent-350-22, fits by claim",
        "kes-guide-7fr-large, san-rx-tight-150-12, unknown by geometry",
        "kes-guide-6fr-right-100, pel-slippery-180, unknown by geometry",
        "kes-guide-6fr-right-100, san-nc-275-15, fits by claim",
        "pel-extension-6fr, san-nc-275-15, unknown by geometry",
        "pel-extension-6fr, kol-scoring-300-15, tight by claim with conflict",
        "ave-extension-6fr-17, quo-burr-125, tight by bench with conflict",
        "ave-extension-6fr-40, quo-burr-125, tight by claim with conflict",
        "pel-extension-6fr, quo-burr-125, tight by claim with conflict",
        "kes-guide-6fr-right-100, quo-burr-175, blocked by claim with conflict",
        "kes-guide-6fr-right-100, quo-burr-250, blocked by geometry" })
    void answersAsWorkedOutByHand(String outer, String inner, String expected) {
        PhaseAnswer in = answer(outer, inner);
        assertEquals(expected, in.verdict().word() + " by " + in.authority().word()
                + (in.hasConflict() ? " with conflict" : ""), () -> in.reasons().toString());
    }

    @Test
    void failureOnTheBenchIsHeardForTheWireThatTheBurrTakes() {
        assertTrue(answer("ave-extension-6fr-40", "quo-burr-125").reasons().stream()
                .anyMatch(r -> r.code() == ReasonCode.BENCH_DID_NOT_PASS));
    }

    private static PhaseAnswer answer(String outer, String inner) {
        Device around = CATALOGUE.device(outer).device();
        return SOLVER.answer(new FitQuestion(ReadDevice.of(around, RULES),
                LumenReference.parse(outer).lumen(around, Direction.TIP_FIRST),
                ReadDevice.of(CATALOGUE.device(inner).device(), RULES), Direction.TIP_FIRST, Optional.empty(), RULES))
                .in();
    }
}
