/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.rules;

import static org.ferrule.fit.device.DeviceKind.BALLOON_CATHETER;
import static org.ferrule.fit.device.DeviceKind.GUIDEWIRE;
import static org.ferrule.fit.device.DeviceKind.GUIDE_CATHETER;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Set;

import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.sample.TestRules;
import org.junit.jupiter.api.Test;

/** The most specific rule wins, then the later; what is not said is an error that names it. */
class RuleSetTest {

    @Test
    void clearanceOfThePairWinsOverThoseOfOneSide() {
        RuleSet rules = TestRules.silent().required(Set.of(GUIDE_CATHETER), Set.of(BALLOON_CATHETER), "3 mm")
                .required(Set.of(GUIDE_CATHETER), Set.of(), "2 mm").required("1 mm").rules();
        assertEquals(length("3 mm"), rules.clearance(GUIDE_CATHETER, BALLOON_CATHETER).required());
        assertEquals(length("2 mm"), rules.clearance(GUIDE_CATHETER, MICROCATHETER).required());
        assertEquals(length("1 mm"), rules.clearance(MICROCATHETER, GUIDEWIRE).required());
    }

    @Test
    void laterClearanceWinsAmongEquals() {
        RuleSet rules = TestRules.silent().required(Set.of(), Set.of(GUIDEWIRE), "1 mm")
                .required(Set.of(MICROCATHETER), Set.of(), "2 mm").rules();
        assertEquals(length("2 mm"), rules.clearance(MICROCATHETER, GUIDEWIRE).required());
    }

    @Test
    void missingRulesAreNamed() {
        RuleSet silent = TestRules.silent().rules();
        assertNames("guidewire in a microcatheter", () -> silent.clearance(MICROCATHETER, GUIDEWIRE));
        assertNames("inner diameter of a microcatheter", () -> silent.span(FigureClass.INNER_DIAMETER, MICROCATHETER));
        assertNames("balloon catheter grows", () -> silent.growth(BALLOON_CATHETER));
        assertNames("wireAhead", silent::wireAheadOrFail);
    }

    private static void assertNames(String expected, Runnable asked) {
        String message = assertThrows(RuleSetException.class, asked::run).getMessage();
        assertTrue(message.contains(expected) && message.contains("rules of the test"), message);
    }

    @Test
    void rulesOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> TestRules.silent().required("-1 mm"));
        assertThrows(IllegalArgumentException.class, () -> TestRules.silent().spans("-1 mm", "0 mm"));
        assertThrows(IllegalArgumentException.class, () -> TestRules.silent().growth("0.9", "1", "1"));
        assertThrows(IllegalArgumentException.class, () -> TestRules.silent().growth("1.2", "1.1", "1.3"));
        assertThrows(IllegalArgumentException.class, () -> TestRules.silent().growth("1.1", "1.3", "1.2"));
        assertThrows(IllegalArgumentException.class, () -> TestRules.silent().sampling("1", "0.9"));
        assertThrows(IllegalArgumentException.class, () -> TestRules.silent().sampling("0.9", "0"));
    }

    @Test
    void aRuleForOtherKindsDoesNotSpeakHere() {
        RuleSet rules = TestRules.silent().span(FigureClass.INNER_DIAMETER, "1 mm", "1 mm")
                .span(FigureClass.INNER_DIAMETER, "2 mm", "2 mm", GUIDE_CATHETER).rules();
        assertEquals(length("1 mm"), rules.span(FigureClass.INNER_DIAMETER, MICROCATHETER).below());
        assertEquals(length("2 mm"), rules.span(FigureClass.INNER_DIAMETER, GUIDE_CATHETER).below());
    }

    @Test
    void sharesOfLimitsLieBetweenNothingAndAll() {
        assertThrows(IllegalArgumentException.class, () -> TestRules.silent().leastFlow(Limits.FlowUse.values()[0],
                "1.1").rules());
        assertThrows(IllegalArgumentException.class, () -> TestRules.silent().leastFlow(Limits.FlowUse.values()[0],
                "-0.1").rules());
        assertThrows(IllegalArgumentException.class, () -> TestRules.silent().greatestChance("1.1").rules());
        assertEquals(1, TestRules.silent().greatestChance("1").rules().limits().chances().size());
        assertEquals(1, TestRules.silent().greatestChance("0").rules().limits().chances().size());
    }

    @Test
    void classesOfFiguresAreFoundByTheirWords() {
        for (FigureClass figure : FigureClass.values()) {
            assertEquals(figure, FigureClass.ofWord(figure.word()));
        }
        assertTrue(assertThrows(IllegalArgumentException.class, () -> FigureClass.ofWord("girth")).getMessage()
                .contains("girth"));
    }

    @Test
    void growthMayBeNone() {
        assertEquals(BigDecimal.ONE, new AfterUseRule(Set.of(), BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE,
                SourceRef.NONE).high());
    }
}
