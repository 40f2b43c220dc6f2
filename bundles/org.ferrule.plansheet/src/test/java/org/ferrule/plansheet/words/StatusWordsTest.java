/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.equipment.Suitability;
import org.ferrule.escalation.plan.BailOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Planner;
import org.ferrule.escalation.plan.Progress;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.plan.StopStatus;
import org.ferrule.escalation.state.Aim;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.technique.Chance;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Pick;
import org.ferrule.shelf.stock.Shelf;
import org.junit.jupiter.api.Test;

/** Where a case stands, what is at hand, and on what its plan rests. */
class StatusWordsTest {
    private final Plan plan = SamplePlan.plan();
    private final PlanWords words = SamplePlan.words(plan.ladder());
    private final StatusWords status = words.status();

    private BailOut bailOut(String role) {
        return plan.bailOut().stream().filter(b -> b.role().id().equals(role)).findFirst().orElseThrow();
    }

    private static Plan planned(Aim aim, List<Attempt> log, Map<String, Boolean> facts) {
        CaseFile file = SamplePlan.file(facts);
        CaseFile other = new CaseFile(file.title(), file.day(), file.system(), file.target(), file.deliver(), facts,
                aim,
                file.spent(), log);
        return new Planner(SamplePlan.instruments(), SamplePlan.plan().ladder()).plan(other,
                new Stock(SamplePlan.shelf(4), Map.of()));
    }

    private static Attempt attempt(String move, Outcome outcome) {
        return new Attempt(move, outcome, Costs.NONE, List.of(), "");
    }

    @Test
    void whatMustBeAtHandIsToldWithDeviceFitAndBoxes() {
        BailOut ready = bailOut("tamponade");
        assertTrue(
                status.bailOut(ready)
                        .matches("balloon to stop a leak: Lutra balloon 1\\.\\d \u00d7 15, .* left at worst"),
                status.bailOut(ready));
        assertTrue(
                status.boxes(ready).get(0).matches("Lutra balloon 1\\.\\d \u00d7 15: lot A.*shelf B, .* left at worst"),
                status.boxes(ready).get(0));
        assertTrue(status.picks(ready).get(0).matches("lot A\\d+, use by .*, cabinet 2, shelf B"),
                status.picks(ready).get(0));
        assertEquals("covered stent: no device in the libraries answers to covered stent: "
                + "covered stent system", status.bailOut(bailOut("covered")));
        assertEquals(List.of(), status.boxes(bailOut("covered")));
        assertEquals(List.of(), status.picks(bailOut("covered")));
    }

    @Test
    void inBriefTheFirstReasonStandsForAll() {
        assertEquals(status.single(bailOut("tamponade").answer()), status.singleInBrief(bailOut("tamponade").answer()));
        MoveAnswer.Single lacking = new MoveAnswer.Single(Optional.empty(),
                List.of(new Lack.FactMissing("staff", false), new Lack.FactMissing("no-ostial", false)));
        assertTrue(status.single(lacking).endsWith("nobody has stated: There is no disease at the ostium"));
        assertEquals("nobody has stated: Somebody in the room is trained in it; 1 more", status.singleInBrief(lacking));
    }

    @Test
    void aDeviceThatDoesNotPassIsNotToBeDelivered() {
        Candidate burr = plan.leftOut().stream().flatMap(l -> l.lacks().stream())
                .filter(Lack.DoesNotPass.class::isInstance).map(l -> ((Lack.DoesNotPass) l).nearest()).findFirst()
                .orElseThrow();
        Role role = plan.bailOut().get(0).role();
        MoveAnswer.Single answer = new MoveAnswer.Single(
                Optional.of(new RoleAnswer(role, List.of(burr), Optional.empty())),
                List.of(new Lack.DoesNotPass(role, burr)));
        assertTrue(status.delivery(answer).startsWith("To be delivered: Osmo burr 1.75 does not serve \u2013 "),
                status.delivery(answer));
    }

    @Test
    void aStopRuleIsReachedReachedWithAStepNotReachedOrToBeWatched() {
        StopStatus contrast = plan.stops().get(0);
        assertEquals("Contrast: stop at the limit of the laboratory", status.stop(contrast));
        assertEquals("reached", status.standing(new StopStatus(contrast.rule(), true, OptionalInt.of(2))));
        assertEquals("reached with step 2, if every step is taken",
                status.standing(new StopStatus(contrast.rule(), false, OptionalInt.of(2))));
        assertEquals("not reached by this plan",
                status.standing(new StopStatus(contrast.rule(), false, OptionalInt.empty())));
    }

    @Test
    void entriesOfALogCountFromOne() {
        assertEquals("log entry 1: the shelf has no item \u201cx\u201d",
                status.problem(new Progress.LogProblem(0, Progress.LogProblem.Kind.UNKNOWN_ITEM, "x")));
        assertEquals("Guide extension in place \u2013 failed", status.attempt(attempt("extension", Outcome.FAILED)));
    }

    @Test
    void aPlanWithoutStepsSaysWhichWayItEnded() {
        Aim aim = plan.file().aim();
        Plan crossed = planned(aim, List.of(attempt("small", Outcome.CROSSED)), Map.of());
        assertEquals("The device is across: nothing is left to plan", status.noSteps(crossed));
        assertFalse(status.isOpen(crossed));
        Plan denied = SamplePlan.plan(Map.of("true-lumen", false));
        assertTrue(status.noSteps(denied).startsWith("Nothing is planned as long as the wire is not seen"));
        assertFalse(status.isOpen(denied));
        assertTrue(status.noSteps(plan).startsWith("Nothing on the ladder can be done"));
        assertTrue(status.isOpen(plan));
        assertEquals("See the wire in the distal true lumen, in two orthogonal views", status.wireCheck());
    }

    @Test
    void assumptionsTellWhatTheAimSets() {
        Aim usual = plan.file().aim();
        Aim other = new Aim(Resource.CONTRAST, 90, usual.budgets(), true, false, false, 0.7);
        List<String> all = words.assumptions().all(planned(other, List.of(), Map.of()));
        assertTrue(all.get(0).startsWith("Spared is contrast medium; ending without success counts as 90 mL."),
                all.get(0));
        assertTrue(
                all.contains("After a failed try, chances of other techniques on the same axis are taken times 0.7"));
        assertTrue(all.contains("Hazard does not decide the order"));
        assertTrue(all.contains("A step may bring in several new risks"));
        assertTrue(all.contains("The limit of what is spared bounds the plan"));
        List<String> often = words.assumptions().all(plan);
        assertTrue(often.contains("A failed try is not held against other techniques on the same axis"));
        assertTrue(often.contains("No step brings in two new risks at once"));
        assertTrue(often.contains("Limits are marked in the plan and do not shorten it"));
        assertTrue(often.stream().anyMatch(line -> line.startsWith("A step of higher hazard")));
    }

    @Test
    void assumptionsCountTheChancesThatRestOnAPriorAlone() {
        long tries = plan.rungs().stream().filter(rung -> !rung.isSetup()).count();
        long first = plan.rungs().stream().filter(rung -> rung.attempt() == 1).count();
        assertTrue(words.assumptions().all(plan).contains((tries - first) + " of " + tries
                + " chances rest on a prior alone. Priors: nobody knows better"));
        List<String> none = words.assumptions().all(SamplePlan.plan(Map.of("true-lumen", false)));
        assertFalse(none.stream().anyMatch(line -> line.contains("rest on a prior alone")), none::toString);
        assertFalse(none.stream().anyMatch(line -> line.contains("better on average")), none::toString);
    }

    @Test
    void aStepTellsKindPlaceAndWhatItChanges() {
        Rung setup = plan.rungs().stream().filter(Rung::isSetup).findFirst().orElseThrow();
        assertEquals("set-up, stays in place", words.rungs().kind(setup));
        assertEquals("", words.rungs().chanceInBrief(setup));
        assertTrue(words.rungs().delivery(setup).startsWith("then the device to be delivered "));
        Rung small = plan.rungs().stream().filter(r -> r.move().id().equals("small")).findFirst().orElseThrow();
        assertEquals("assumed 0.44: prior 1 to 1, own 3 of 7", words.rungs().chanceInBrief(small));
        assertEquals("", words.rungs().delivery(new Rung(small.number(), small.move(), 1, small.equipment(),
                small.taken(), small.costs(), small.placement(), small.expected(), small.worst(), Set.of(),
                Optional.empty())));
        assertEquals("prior 2 to 1: own; no own counts",
                words.rungs().basis(new Chance(0, 0, new Chance.Prior(2, 1, "own"))));
    }

    @Test
    void aPlaceChangesToADeviceFromADeviceOrBoth() {
        assertEquals("second wire in: Filo wire 190",
                words.rungs().change(new SystemChange(Slot.SECOND_WIRE, Optional.empty(), Optional.of("second"))));
        assertEquals("second wire out: Filo wire 190",
                words.rungs().change(new SystemChange(Slot.SECOND_WIRE, Optional.of("second"), Optional.empty())));
        assertEquals("main wire: Filo wire 190 in place of Filo wire 300",
                words.rungs().change(new SystemChange(Slot.MAIN_WIRE, Optional.of("wire"), Optional.of("second"))));
    }

    @Test
    void whatStandsOnABoxIsTheItemElseTheDevice() {
        Candidate none = new Candidate(Optional.of("b10"), "b10", Suitability.STANDS_BY,
                new Candidate.Supply(List.of(), 0, 0, List.of()));
        assertEquals("Lutra balloon b10", words.equipment().label(none));
        assertEquals("stands by, passes no lumen", words.equipment().fit(none));
        Role role = bailOut("tamponade").role();
        RoleAnswer nobody = new RoleAnswer(role, List.of(), Optional.empty());
        assertEquals("balloon to stop a leak: nothing", words.equipment().chosen(nobody));
        assertEquals("", words.equipment().why(nobody));
    }

    @Test
    void aLotTellsWhatIsKnownOfIt() {
        Lot known = new Lot("A213", Optional.of(LocalDate.of(2027, 2, 28)), 1, "shelf B", Optional.of("77"));
        assertEquals(List.of("lot A213", "serial no. 77", "use by 2027-02-28", "shelf B"),
                words.equipment().lot(known));
        Lot bare = new Lot("", Optional.empty(), 2, "", Optional.empty());
        assertEquals(List.of("no lot noted", "no expiry noted"), words.equipment().lot(bare));
        assertEquals("2 \u00d7 no lot noted, no expiry noted", words.equipment().box(new Pick("sb-10", bare, 2)));
        assertEquals("Lutra balloon 1.0 \u00d7 15: no lot noted, no expiry noted",
                words.equipment().pick(new Pick("sb-10", bare, 1)));
    }

    @Test
    void anItemWithoutANameHasThatOfItsDevice() {
        Item unnamed = new Item("x", Optional.of("b10"), Optional.empty(), List.of(), 1, Optional.empty(), " ");
        Item bare = new Item("y", Optional.empty(), Optional.empty(), List.of(), 1, Optional.empty(), "");
        Ladder ladder = plan.ladder();
        Map<String, String> facts = new HashMap<>(ladder.facts());
        facts.putAll(Map.of("dot", "It is so. ", "plain", "It is so"));
        Ladder dotted = new Ladder(ladder.title(), ladder.revision(), facts, ladder.setups(), ladder.techniques(),
                ladder.bailOut(), ladder.stopRules());
        PlanNames names = PlanWords.english(dotted, SamplePlan.instruments(), new Shelf(List.of(unnamed, bare)),
                UnitPreferences.in(LengthUnit.MILLIMETRE), "").names();
        assertEquals("Lutra balloon b10", names.item("x"));
        assertEquals("y", names.item("y"));
        assertEquals("It is so", names.fact("dot"));
        assertEquals("It is so", names.fact("plain"));
        assertEquals("other", names.fact("other"));
        assertFalse(names.isSetup("small"));
        assertTrue(names.isSetup("second"));
    }
}
