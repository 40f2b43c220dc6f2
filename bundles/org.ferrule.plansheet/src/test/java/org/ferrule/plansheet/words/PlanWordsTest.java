/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.ferrule.escalation.plan.BailOut;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.plansheet.SamplePlan;
import org.junit.jupiter.api.Test;

class PlanWordsTest {
    private final Plan plan = SamplePlan.plan();
    private final PlanWords words = SamplePlan.words(plan.ladder());

    private Rung rung(String move, int attempt) {
        return plan.rungs().stream().filter(r -> r.move().id().equals(move) && r.attempt() == attempt).findFirst()
                .orElseThrow();
    }

    private LeftOut leftOut(String move) {
        return plan.leftOut().stream().filter(l -> l.move().id().equals(move)).findFirst().orElseThrow();
    }

    private BailOut bailOut(String role) {
        return plan.bailOut().stream().filter(b -> b.role().id().equals(role)).findFirst().orElseThrow();
    }

    @Test
    void aHeadingTellsNumberNameAndWhichTryItIs() {
        Rung second = rung("small", 2);
        assertEquals(second.number() + ". Small balloon, try 2 of 3", words.rungs().heading(second));
        Rung setup = rung("extension", 0);
        assertEquals(setup.number() + ". Guide extension in place", words.rungs().heading(setup));
    }

    @Test
    void aTryStandsByItsCostPerChanceInTheUnitOfWhatIsSpared() {
        // computed: 5 min at a chance of (1 + 3) / (1 + 1 + 7)
        assertEquals("stands here by its cost per chance: 11 min per chance",
                words.rungs().why(rung("small", 1), plan));
        assertEquals("11", words.rungs().indexNumber(rung("small", 1)));
    }

    @Test
    void aSetupStandsTogetherWithTheTriesThatPayForIt() {
        Rung setup = rung("extension", 0);
        String numbers = setup.number() + "\u2013" + (setup.number() + 2);
        assertTrue(words.rungs().why(setup, plan).contains("steps " + numbers + " taken together"));
        assertEquals(numbers, words.rungs().block(setup, plan));
        assertEquals("", words.rungs().block(rung("small", 1), plan));
    }

    @Test
    void aHigherHazardSaysThatLowerOnesComeFirst() {
        assertTrue(words.rungs().why(rung("rupture", 1), plan).endsWith("lower hazard that are possible come first"));
        assertEquals(List.of("raised hazard", "outside the label: beyond the rated burst pressure"),
                words.rungs().marks(rung("rupture", 1)));
    }

    @Test
    void aChanceIsAnAssumptionWithItsPriorAndTheOwnCounts() {
        assertEquals("assumed 0.44 (prior 1 to 1: nobody knows better; own counts 3 of 7)",
                words.rungs().chance(rung("small", 1)));
        assertEquals("assumed 0.33 (prior 1 to 2: nobody knows better; no own counts)",
                words.rungs().chance(rung("small", 2)));
        assertEquals("", words.rungs().chance(rung("extension", 0)));
    }

    @Test
    void noWordsTellTheChanceOfTheWholePlan() {
        String all = everything().collect(Collectors.joining("\n"));
        assertFalse(all.contains(Amounts.share(plan.order().successChance())), all);
        plan.rungs().stream().skip(1).forEach(rung -> assertFalse(
                all.contains(Amounts.share(rung.placement().reach()) + " "), () -> "reach of " + rung.number()));
    }

    private Stream<String> everything() {
        List<String> all = new ArrayList<>(words.assumptions().all(plan));
        for (Rung rung : plan.rungs()) {
            all.addAll(List.of(words.rungs().heading(rung), words.rungs().why(rung, plan)));
            all.addAll(words.rungs().changes(rung));
        }
        Budget.of(plan).forEach(b -> all.addAll(List.of(words.budgets().sums(b), words.budgets().beyond(b))));
        plan.leftOut().forEach(l -> all.add(words.leftOut().why(l)));
        return all.stream();
    }

    @Test
    void equipmentIsToldWithVerdictReasonAndWhereItLies() {
        var role = rung("small", 1).equipment().roles().get(0);
        assertEquals("small balloon: Lutra balloon b10", words.equipment().chosen(role));
        assertEquals("no other can be planned with", words.equipment().why(role));
        assertEquals("Lutra balloon 1.0 \u00d7 15", words.equipment().label(role.chosen().orElseThrow()));
        assertEquals("small balloon: Lutra balloon 1.0 \u00d7 15",
                words.equipment().labelled(role.role(), role.chosen().orElseThrow()));
        assertTrue(words.equipment().fit(role.chosen().orElseThrow()).matches("tight, \\d\\.\\d+ mm left at worst"));
        assertEquals("Lutra balloon 1.0 \u00d7 15: lot A213, use by 2027-02-28, cabinet 2, shelf B",
                words.equipment().pick(role.chosen().get().supply().picks().get(0)));
    }

    @Test
    void whatASetupLeavesIsTold() {
        assertEquals(List.of("guide extension in: Halden extension 6 Fr"),
                words.rungs().changes(rung("extension", 0)));
        assertEquals(List.of(), words.rungs().changes(rung("small", 1)));
    }

    @Test
    void lacksAreToldWithRoleDeviceAndTheReasonsOfCharts() {
        assertTrue(words.leftOut().why(leftOut("laser")).startsWith("laser generator: no usable laser generator"));
        String burr = words.leftOut().why(leftOut("burr"));
        assertTrue(burr.startsWith("burr: Osmo burr 1.75 does not serve \u2013 over its wire: "), burr);
        assertEquals(List.of("get laser generator"), words.leftOut().remedies(leftOut("laser")));
    }

    @Test
    void whatMustBeAtHandIsMarked() {
        assertEquals(BailOutMark.NOT_ON_SHELF, BailOutMark.of(bailOut("covered")));
        assertEquals(BailOutMark.READY, BailOutMark.of(bailOut("tamponade")));
        assertEquals(BailOutMark.NOT_KNOWN, BailOutMark.of(bailOut("imaging")));
        assertEquals(BailOutMark.values().length,
                Arrays.stream(BailOutMark.values()).map(BailOutMark::word).distinct().count());
        assertEquals(BailOutMark.values().length,
                Arrays.stream(BailOutMark.values()).map(BailOutMark::glyph).distinct().count());
    }

    @Test
    void budgetsTellTheFirstStepBeyondThem() {
        Budget time = Budget.of(plan).stream().filter(b -> b.resource() == Resource.TIME).findFirst().orElseThrow();
        Rung first = plan.rungs().stream().filter(r -> r.worst().minutes() > 30).findFirst().orElseThrow();
        assertEquals("beyond the limit from step " + first.number() + " on, if every step is taken",
                words.budgets().beyond(time));
        assertTrue(words.budgets().sums(time).startsWith("4 used, "));
        assertTrue(words.budgets().sums(time).endsWith("of 30 min"));
    }

    @Test
    void stopRulesTellWhereTheyAreReachedOrThatSomebodyWatches() {
        assertTrue(words.status().standing(plan.stops().get(0)).startsWith("reached with step "));
        assertEquals("to be watched", words.status().standing(plan.stops().get(1)));
    }

    @Test
    void theDeviceToBeDeliveredIsToldWithItsVerdict() {
        assertTrue(words.status().delivery(plan.delivery().orElseThrow())
                .matches("To be delivered: Lutra stent 3.0 x 18, fits by claim, .*; not on the shelf"));
    }

    @Test
    void aSetupThatWasDoneIsInPlace() {
        assertEquals("Guide extension in place \u2013 in place", words.status().attempt(attempt("extension")));
        assertEquals("Small balloon \u2013 crossed", words.status().attempt(attempt("small")));
    }

    private static Attempt attempt(String move) {
        return new Attempt(move, Outcome.CROSSED, Costs.NONE, List.of(), "");
    }

    @Test
    void assumptionsNameIndependenceAndWhoseThePriorsAre() {
        String all = String.join("\n", words.assumptions().all(plan));
        assertTrue(all.contains("taken as independent"));
        assertEquals(plan.order().isExact(), all.contains("No allowed order of these steps does better on average"));
        assertEquals(plan.rungs().stream().anyMatch(rung -> !rung.equipment().drawnBack().isEmpty()),
                all.contains("forward again is not reckoned"));
        assertTrue(all.contains("Priors: nobody knows better"));
        assertTrue(all.contains("ending without success counts as 60 min"));
    }
}
