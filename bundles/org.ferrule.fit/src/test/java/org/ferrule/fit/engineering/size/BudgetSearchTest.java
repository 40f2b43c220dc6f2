/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

class BudgetSearchTest {

    private static Optional<ToleranceBudget> budget(SampleQuestion question) {
        return BudgetSearch.of(question.question(), FitSolver.standard(List.of()));
    }

    private static SampleDevice rodOf(String diameter) {
        return rod("rod", DeviceKind.MICROCATHETER, "135 cm", diameter);
    }

    /** Worst 1.768 - 1.74 = 0.028 mm; 0.04 are required; 0.01 and 0.03 mm of spread give 1/4 and 3/4 of 0.012 mm. */
    @Test
    void sharesWhatIsMissingInProportionToTheSpread() {
        ToleranceBudget budget = budget(passage(rodOf("1.71 mm ±0.03"), guide("g", "1.778 mm ±0.01"))
                .under(TestRules.exact().required("0.04 mm"))).orElseThrow();
        assertEquals(length("0.012 mm"), budget.missing());
        assertEquals(List.of(length("0.01 mm"), length("0.03 mm")),
                budget.contributors().stream().map(Contributor::spread).toList());
        assertEquals(List.of(length("0.003 mm"), length("0.009 mm")),
                budget.contributors().stream().map(Contributor::shared).toList());
        assertEquals(List.of(false, true), budget.contributors().stream().map(Contributor::isEnoughAlone).toList());
        assertEquals(Optional.of(length("0.028 mm")), budget.requiredInstead());
        assertEquals(Optional.of(Verdict.FITS), budget.afterSharing());
        assertEquals(Length.ZERO, budget.missingWithoutSpread());
    }

    /** T1: 6.520 ± 0.010 less 6.500 ± 0.008 in leaves 0.002 in at worst; 0.0021 in asked for lack 0.0001 in. */
    @Test
    void thePublishedStackLacksATenthOfAMil() {
        SampleDevice outer = device("outer", DeviceKind.OTHER).length("10 in")
                .lumen("lumen", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 in", "10 in")
                .bore("0 in", "10 in", "6.520 in ±0.010");
        SampleDevice inner = device("inner", DeviceKind.OTHER).length("1 in").section("stack", "0 in", "1 in",
                "6.500 in ±0.008");
        ToleranceBudget budget = budget(passage(inner, outer).under(TestRules.exact().required("0.0021 in")))
                .orElseThrow();
        assertEquals(length("0.0001 in"), budget.missing());
        assertEquals(length("0.002 in"), budget.requiredInstead().orElseThrow());
        assertTrue(budget.contributors().stream().allMatch(Contributor::isEnoughAlone));
    }

    @Test
    void tellsAssumedFromStatedSpread() {
        ToleranceBudget budget = budget(passage(rodOf("1.74 mm"), guide("g", "1.778 mm ±0.01"))
                .under(TestRules.exact().spans("0.01 mm", "0.02 mm"))).orElseThrow();
        assertEquals(List.of(false, true), budget.contributors().stream().map(Contributor::assumed).toList());
    }

    @Test
    void theWireBesideTheShaftIsAContributorOfItsOwn() {
        ToleranceBudget budget = budget(passage(balloon("b", "0.8 mm", "1.38 mm"), guide("g", "1.778 mm"))
                .under(TestRules.exact().spans("0.01 mm", "0.01 mm"))).orElseThrow();
        assertEquals(3, budget.contributors().size());
        assertEquals(List.of(length("0.01 mm"), length("0.01 mm"), length("0.01 mm")),
                budget.contributors().stream().map(Contributor::spread).toList());
        assertEquals(Optional.of(Verdict.FITS), budget.afterSharing());
    }

    @Test
    void saysWhatIsMissingEvenWithoutSpread() {
        ToleranceBudget budget = budget(passage(rodOf("1.77 mm ±0.005"), guide("g", "1.778 mm ±0.002"))).orElseThrow();
        assertEquals(length("0.017 mm"), budget.missingWithoutSpread());
        assertEquals(Optional.empty(), budget.afterSharing());
    }

    @Test
    void noRequiredClearanceSavesAWorstCaseThatOverlaps() {
        ToleranceBudget budget = budget(passage(rodOf("1.75 mm ±0.05"), guide("g", "1.778 mm"))).orElseThrow();
        assertFalse(budget.requiredInstead().isPresent());
    }

    @Test
    void whatIsNotTightByGeometryHasNoBudget() {
        assertEquals(Optional.empty(), budget(passage(rodOf("1 mm"), guide("g", "1.778 mm"))));
        assertEquals(Optional.empty(), budget(passage(rodOf("2 mm"), guide("g", "1.778 mm"))));
        assertEquals(Optional.empty(), budget(passage(rodOf("?"), guide("g", "1.778 mm"))));
    }

    private static SampleDevice otherOf(String diameter) {
        return rod("other", DeviceKind.MICROCATHETER, "135 cm", diameter);
    }

    /** Worst 2.08 - 1.03 - 1.03 = 0.02 mm; 0.04 are required; 0.02, 0.03 and 0.03 mm of spread each give a quarter. */
    @Test
    void whatLiesBesideIsAContributorToo() {
        ToleranceBudget budget = budget(passage(rodOf("1 mm ±0.03"), guide("g", "2.1 mm ±0.02"))
                .beside(otherOf("1 mm ±0.03"), "0 mm").under(TestRules.exact().required("0.04 mm"))).orElseThrow();
        assertEquals(length("0.02 mm"), budget.missing());
        assertEquals(List.of("g", "rod", "other"),
                budget.contributors().stream().map(c -> c.place().device().id()).toList());
        assertEquals(List.of(length("0.005 mm"), length("0.0075 mm"), length("0.0075 mm")),
                budget.contributors().stream().map(Contributor::shared).toList());
        assertTrue(budget.contributors().stream().allMatch(Contributor::isEnoughAlone));
        assertTrue(budget.contributors().stream().noneMatch(Contributor::assumed), "all of it is stated");
        assertEquals(Optional.of(Verdict.FITS), budget.afterSharing());
    }

    @Test
    void besideOthersAndInBendsAssumedSpreadIsToldFromStatedToo() {
        TestRules rules = TestRules.exact().spans("0.02 mm", "0.03 mm").required("0.04 mm");
        assertEquals(List.of(true, false, true), assumed(passage(rodOf("1 mm ±0.03"), guide("g", "2.1 mm"))
                .beside(otherOf("1 mm"), "0 mm").under(rules)));
        SampleDevice burr = device("burr", DeviceKind.ROTATIONAL_BURR).length("135 cm")
                .section("burr", "0 mm", "9.7 mm", "1.2 mm").rigid().section("shaft", "9.7 mm", "135 cm", "0.8 mm");
        assertEquals(List.of(false, true), assumed(passage(burr, guide("g", "1.79 mm ±0.01")).reach("10 cm")
                .bentLumen("20 mm").under(TestRules.exact().spans("0.02 mm", "0.02 mm").required("0 mm"))));
    }

    private static List<Boolean> assumed(SampleQuestion question) {
        return budget(question).orElseThrow().contributors().stream().map(Contributor::assumed).toList();
    }

    /** Two of one device have the same papers: a figure that gives 0.005 mm gives it twice. */
    @Test
    void twoOfOneDeviceGiveTogether() {
        ToleranceBudget budget = budget(passage(rodOf("1 mm ±0.03"), guide("g", "2.1 mm"))
                .beside(rodOf("1 mm ±0.03"), "0 mm").under(TestRules.exact().required("0.05 mm"))).orElseThrow();
        assertEquals(2, budget.contributors().size());
        assertEquals(length("0.005 mm"), budget.contributors().get(1).alone());
        assertEquals(Optional.of(Verdict.FITS), budget.afterSharing());
    }

    /** Three equal discs need 1 + 2/sqrt(3) of one (Graham et al., 1998): 1.02 mm need 2.197795, 1 mm 2.154701 mm. */
    @Test
    void threeSideBySideGiveWhatTheirCircleAsksFor() {
        ToleranceBudget budget = budget(passage(rodOf("1 mm ±0.02"), guide("g", "2.2 mm"))
                .beside(otherOf("1 mm ±0.02"), "0 mm").beside(rod("third", DeviceKind.MICROCATHETER, "135 cm",
                        "1 mm ±0.02"), "0 mm")
                .under(TestRules.exact().required("0.01 mm"))).orElseThrow();
        assertEquals(0.007795, budget.missing().mm(), 1e-6);
        for (Contributor contributor : budget.contributors().subList(1, 4)) {
            assertEquals(0.02 * 0.007795 / (2.197795 - 2.154701), contributor.shared().mm(), 1e-5);
            assertTrue(contributor.alone().compareTo(budget.missing()) > 0, "one disc counts for less than the circle");
            assertTrue(contributor.isEnoughAlone());
        }
        assertEquals(Optional.of(Verdict.FITS), budget.afterSharing());
        assertEquals(Length.ZERO, budget.missingWithoutSpread());
    }

    @Test
    void theTubeOfAnExtensionAndItsPushRodAreContributors() {
        SampleDevice extension = device("e", DeviceKind.GUIDE_EXTENSION).length("150 cm")
                .section("tube", "0 cm", "25 cm", "1.7 mm").section("rod", "25 cm", "150 cm", "0.5 mm ±0.02")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.5 mm ±0.02");
        ToleranceBudget inTube = budget(passage(rodOf("1.46 mm ±0.01"), guide("g", "2.2 mm")).reach("10 cm")
                .through(extension, "5 cm")).orElseThrow();
        assertEquals(List.of("e", "rod"), inTube.contributors().stream().map(c -> c.place().device().id()).toList());
        ToleranceBudget besideRod = budget(passage(rodOf("1.4 mm ±0.01"), guide("g", "1.94 mm")).reach("10 cm")
                .through(extension, "5 cm")).orElseThrow();
        assertEquals(List.of("g", "rod", "e"),
                besideRod.contributors().stream().map(c -> c.place().device().id()).toList());
        assertEquals(Optional.of(Verdict.FITS), besideRod.afterSharing());
    }

    /** 1.2 mm over 9.7598 mm just needs 1.778 mm at a radius of 20 mm (closed form; computed). */
    @Test
    void aRigidPartThatIsTightInABendHasABudget() {
        SampleDevice burr = device("burr", DeviceKind.ROTATIONAL_BURR).length("135 cm")
                .section("burr", "0 mm", "9.7 mm", "1.2 mm ±0.02").rigid()
                .section("shaft", "9.7 mm", "135 cm", "0.8 mm");
        ToleranceBudget budget = budget(passage(burr, guide("g", "1.79 mm ±0.01")).reach("10 cm").bentLumen("20 mm")
                .under(TestRules.exact().required("0 mm"))).orElseThrow();
        assertTrue(budget.clearance().worst().isNegative(), "the thickest in the narrowest needs more");
        assertEquals(List.of("g", "burr"), budget.contributors().stream().map(c -> c.place().device().id()).toList());
        assertEquals(Optional.of(Verdict.FITS), budget.afterSharing());
        for (Contributor contributor : budget.contributors()) {
            assertTrue(contributor.shared().compareTo(contributor.spread()) <= 0);
        }
    }
}
