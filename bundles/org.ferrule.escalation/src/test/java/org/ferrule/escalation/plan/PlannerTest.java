/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import static org.ferrule.escalation.sample.Moves.after;
import static org.ferrule.escalation.sample.Moves.equipment;
import static org.ferrule.escalation.sample.Moves.extension;
import static org.ferrule.escalation.sample.Moves.ladder;
import static org.ferrule.escalation.sample.Moves.needing;
import static org.ferrule.escalation.sample.Moves.on;
import static org.ferrule.escalation.sample.Moves.only;
import static org.ferrule.escalation.sample.Moves.over;
import static org.ferrule.escalation.sample.Moves.technique;
import static org.ferrule.escalation.sample.Moves.tries;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.Choice;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.plan.LeftOut.Why;
import org.ferrule.escalation.sample.Cases;
import org.ferrule.escalation.sample.Moves;
import org.ferrule.escalation.sample.Room;
import org.ferrule.escalation.state.Aim;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Task;
import org.ferrule.escalation.technique.Hazard;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Need;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

class PlannerTest {
    private static final Technique SMALL = technique("small", Axis.PROFILE, tries(2, 0.5), only("balloon",
            "balloon-1.0"));
    private static final Technique LARGE = technique("large", Axis.MODIFY, tries(3, 0.3), only("balloon",
            "balloon-1.5"));
    private static final Technique BURR = on(technique("burr", Axis.MODIFY, tries(10, 0.9), only("burr", "burr-1.25"),
            equipment("console")), "burr-wire");

    private static Plan plan(Room room, CaseFile file, Ladder ladder) {
        return new Planner(room.instruments(), ladder).plan(file, room.stock());
    }

    private static List<String> rungs(Plan plan) {
        return plan.rungs().stream().map(r -> r.move().id()).toList();
    }

    private static LeftOut leftOut(Plan plan, String id) {
        return plan.leftOut().stream().filter(l -> l.move().id().equals(id)).findFirst().orElseThrow();
    }

    private static Room stocked() {
        return Room.usual().has("balloon-1.0", 2).has("balloon-1.5", 2).has("micro", 1).has("burr-1.25", 1)
                .has("burr-wire", 1).has("balloon-2.5", 1).has("extension-6", 1).hasEquipment("console");
    }

    // Reference: stop at the first success, least cost per chance first (Unluyurt 2004, Discrete Appl Math 142:189).
    @Test
    void leastCostPerChanceComesFirst() {
        Plan plan = plan(stocked(), Cases.usual(), ladder(List.of(), LARGE, SMALL));
        assertEquals(List.of("small", "large"), rungs(plan));
        assertEquals(2 + 0.5 * 3 + 0.35 * 100, plan.order().expectedCost(), 1e-9);
        assertEquals(WireCheck.STATED, plan.wireCheck());
        assertTrue(plan.canGoOn());
    }

    @Test
    void equipmentComesFromTheShelfWithItsLotAndReason() {
        Plan plan = plan(stocked(), Cases.usual(), ladder(List.of(), SMALL));
        Rung rung = plan.rungs().get(0);
        assertEquals("L-balloon-1.0", rung.taken().get(0).lot().lot());
        assertEquals(Optional.of(Choice.ONLY_ONE), rung.equipment().roles().get(0).choice());
        assertEquals(Verdict.FITS, rung.equipment().roles().get(0).chosen().orElseThrow().suitability().verdict());
    }

    @Test
    void aDedicatedWireIsAnExchangeThatMustBePossible() {
        Plan plan = plan(stocked(), Cases.usual(), ladder(List.of(Moves.burrWire(4)), BURR));
        assertEquals(List.of("burr-wire", "burr"), rungs(plan));
        Rung exchange = plan.rungs().get(0);
        assertTrue(exchange.isSetup());
        // A wire of 190 cm is too short to exchange over, so a balloon has to hold it, and that must pass and fill.
        assertEquals(List.of("catheter", "trap", "wire"),
                exchange.equipment().roles().stream().map(r -> r.role().id()).toList());
        assertEquals(Optional.of("balloon-2.5"), exchange.equipment().device("trap"));
        assertEquals(Optional.of("burr-wire"), exchange.equipment().after().mainWire());
    }

    @Test
    void aLongWireNeedsNothingToHoldIt() {
        CaseFile file = Cases.of(Cases.system("guide-6", "wire-300"), Map.of("true-lumen", true), Cases.TIME);
        Plan plan = plan(stocked(), file, ladder(List.of(Moves.burrWire(4)), BURR));
        assertEquals(List.of("catheter", "wire"),
                plan.rungs().get(0).equipment().roles().stream().map(r -> r.role().id()).toList());
    }

    @Test
    void withoutAWireExchangeThereIsNoBurr() {
        Room room = Room.usual().has("burr-1.25", 1).has("burr-wire", 1).hasEquipment("console");
        Plan plan = plan(room, Cases.usual(), ladder(List.of(Moves.burrWire(4)), BURR));
        assertFalse(plan.canGoOn());
        assertInstanceOf(Lack.SetupImpossible.class, leftOut(plan, "burr").lacks().get(0));
        LeftOut setup = leftOut(plan, "burr-wire");
        assertTrue(setup.lacks().stream().anyMatch(Lack.NotOnShelf.class::isInstance));
        assertTrue(setup.remedies().contains(new Remedy.Obtain("micro")));
    }

    @Test
    void anExtensionShrinksTheLumenAndIsDrawnBackForWhatDoesNotPassIt() {
        Technique pushed = on(technique("pushed", Axis.SUPPORT, tries(1, 0.6), only("balloon", "balloon-1.0")),
                "extension");
        Technique burr = technique("burr", Axis.MODIFY, tries(10, 0.9), only("burr", "burr-1.25"));
        Plan plan = plan(stocked(), Cases.of(Cases.system("guide-6", "burr-wire"), Map.of(), Cases.TIME),
                ladder(List.of(extension(1)), burr, pushed));
        assertEquals(List.of("extension", "pushed", "burr"), rungs(plan));
        assertTrue(plan.order().isExact());
        assertEquals(Set.of(Slot.EXTENSION), plan.rungs().get(2).equipment().drawnBack());
        assertEquals(Set.of(), plan.rungs().get(1).equipment().drawnBack());
    }

    @Test
    void missingEquipmentIsToldWithWhatWouldServe() {
        Plan plan = plan(Room.usual(), Cases.usual(), ladder(List.of(), SMALL));
        assertFalse(plan.canGoOn());
        LeftOut left = leftOut(plan, "small");
        assertEquals(Why.IMPOSSIBLE, left.why());
        assertEquals(List.of("balloon-1.0"), ((Lack.NotOnShelf) left.lacks().get(0)).wouldServe());
        assertEquals(List.of(new Remedy.Obtain("balloon-1.0")), left.remedies());
    }

    @Test
    void whatHasExpiredCannotBeUsed() {
        Room room = Room.usual().has("balloon-1.0", 3, Room.DAY.minusDays(1));
        LeftOut left = leftOut(plan(room, Cases.usual(), ladder(List.of(), SMALL)), "small");
        assertEquals(Room.DAY.minusDays(1), ((Lack.Expired) left.lacks().get(0)).expiry());
    }

    @Test
    void theLastUnitIsNotTakenTwice() {
        Room room = Room.usual().has("balloon-1.0", 1);
        Technique again = after(technique("again", Axis.PROFILE, tries(3, 0.2), only("balloon", "balloon-1.0")),
                "small");
        Plan plan = plan(room, Cases.usual(), ladder(List.of(), SMALL, again));
        assertEquals(List.of("small"), rungs(plan));
        assertEquals(new Lack.UsedUp(again.roles().get(0), "balloon-1.0"), leftOut(plan, "again").lacks().get(0));
    }

    @Test
    void whatIsTooThickSaysByHowMuchAndWhichGuideWouldServe() {
        Room room = Room.usual().balloon("thick", "3.0 mm", "1.79 mm").has("thick", 1).has("guide-7", 1);
        Technique thick = technique("thick", Axis.MODIFY, tries(2, 0.5), only("balloon", "thick"));
        LeftOut left = leftOut(plan(room, Cases.usual(), ladder(List.of(), thick)), "thick");
        Lack.DoesNotPass lack = (Lack.DoesNotPass) left.lacks().get(0);
        assertEquals(Verdict.BLOCKED, lack.nearest().suitability().verdict());
        assertTrue(lack.nearest().suitability().worstClearance().orElseThrow().isNegative());
        assertEquals(List.of(new Remedy.ExchangeGuide("guide-7", true, "thick")), left.remedies());
    }

    @Test
    void aMicrocatheterInTheWayIsToldAndWhatAStepNeedsIsNot() {
        Room room = Room.usual().balloon("thick", "3.0 mm", "1.2 mm").has("thick", 1);
        Technique beside = technique("beside", Axis.MODIFY, tries(2, 0.5), Moves.role("balloon",
                Moves.ofDevices("thick"), Task.PASS, Carrier.SECOND_WIRE, Goal.LESION, false));
        SystemState system = Cases.system("guide-6", "wire-300").withSecondWire("wire-190").withMicrocatheter("micro");
        CaseFile file = Cases.of(system, Map.of("true-lumen", true), Cases.TIME);
        assertEquals(List.of(new Remedy.TakeOut(Slot.MICROCATHETER, "thick")),
                leftOut(plan(room, file, ladder(List.of(), beside)), "beside").remedies());
    }

    @Test
    void whatNobodyStatesDoesNotHold() {
        Technique careful = needing(SMALL, new Need.Fact("no-dissection"));
        LeftOut left = leftOut(plan(stocked(), Cases.usual(), ladder(List.of(), careful)), "small");
        assertEquals(List.of(new Lack.FactMissing("no-dissection", false)), left.lacks());
        assertEquals(List.of(new Remedy.State("no-dissection")), left.remedies());
    }

    @Test
    void nothingIsPlannedWhenTheWireIsNotInTheTrueLumen() {
        CaseFile file = Cases.of(Cases.system("guide-6", "wire-190"), Map.of("true-lumen", false), Cases.TIME);
        Plan plan = plan(stocked(), file, ladder(List.of(), SMALL));
        assertEquals(WireCheck.DENIED, plan.wireCheck());
        assertFalse(plan.canGoOn());
        assertEquals(List.of(new Lack.FactMissing(WireCheck.FACT, true)), leftOut(plan, "small").lacks());
    }

    @Test
    void theWireCheckComesFirstWhenNobodyStatesIt() {
        CaseFile file = Cases.of(Cases.system("guide-6", "wire-190"), Map.of(), Cases.TIME);
        assertEquals(WireCheck.TO_BE_SEEN, plan(stocked(), file, ladder(List.of(), SMALL)).wireCheck());
    }

    @Test
    void aHigherHazardComesLaterWhateverItsIndex() {
        Technique risky = Moves.hazard(technique("risky", Axis.MODIFY, tries(1, 0.9), only("balloon", "balloon-1.5")),
                Hazard.HIGH);
        Aim tiers = new Aim(Resource.TIME, 100, Map.of(), false, true, false, 1);
        assertEquals(List.of("small", "risky"),
                rungs(plan(stocked(), Cases.with(Cases.usual(), tiers), ladder(List.of(), risky, SMALL))));
        assertEquals(List.of("risky", "small"), rungs(plan(stocked(), Cases.usual(), ladder(List.of(), risky, SMALL))));
    }

    @Test
    void whatCostsMoreThanStoppingIsNotWorthIt() {
        Aim cheap = new Aim(Resource.TIME, 5, Map.of(), false, false, false, 1);
        Plan plan = plan(stocked(), Cases.with(Cases.usual(), cheap), ladder(List.of(), SMALL, LARGE));
        assertEquals(List.of("small"), rungs(plan));
        assertEquals(Why.NOT_WORTH_IT, leftOut(plan, "large").why());
    }

    @Test
    void loggingAnAttemptPlansAnewAndUnloggingRestores() {
        Ladder ladder = ladder(List.of(), SMALL, LARGE);
        Planner planner = new Planner(stocked().instruments(), ladder);
        Plan before = planner.plan(Cases.usual(), stocked().stock());
        CaseFile logged = Cases.usual().logging(Cases.failed("small", "balloon", "balloon-1.0"));
        Plan after = planner.plan(logged, stocked().stock());
        assertEquals(List.of("large"), rungs(after));
        assertEquals(Why.EXHAUSTED, leftOut(after, "small").why());
        assertEquals(5, after.rungs().get(0).worst().minutes() - 3, 1e-9);
        assertEquals(1, after.progress().stock().shelf().item("balloon-1.0").orElseThrow().quantity());
        assertEquals(before, planner.plan(Cases.usual(), stocked().stock()));
    }

    @Test
    void aLoggedSetupIsInPlace() {
        Technique pushed = on(SMALL, "extension");
        Attempt placed = new Attempt("extension", Outcome.CROSSED, Costs.NONE,
                List.of(new Attempt.UsedUnit("extension", "extension-6", "L-extension-6")), "");
        Plan plan = plan(stocked(), Cases.usual().logging(placed), ladder(List.of(extension(3)), pushed));
        assertEquals(List.of("small"), rungs(plan));
        assertEquals("extension-6", plan.progress().system().extension().orElseThrow().device());
        // It is asked to go 8 cm, but the lesion begins at 7 cm.
        assertEquals(70, plan.progress().system().extension().orElseThrow().protrusion().mm(), 1e-9);
    }

    @Test
    void whatTheSystemHasAlreadyIsNotSetUpAgain() {
        CaseFile burrWire = Cases.of(Cases.system("guide-6", "burr-wire"), Map.of("true-lumen", true), Cases.TIME);
        assertEquals(List.of("burr"), rungs(plan(stocked(), burrWire, ladder(List.of(Moves.burrWire(4)), BURR))));
        CaseFile workhorse = Cases.usual();
        assertEquals(List.of("burr-wire", "burr"),
                rungs(plan(stocked(), workhorse, ladder(List.of(Moves.burrWire(4)), BURR))));
    }

    @Test
    void whatHasNoLumenForAWireDoesNotRunOnOne() {
        Room room = Room.usual().add(SampleDevice.rod("trap", DeviceKind.BALLOON_CATHETER, "140 cm", "0.8 mm"))
                .has("trap", 1);
        Technique any = technique("any", Axis.PROFILE, tries(2, 0.5), only("balloon", "trap"));
        assertInstanceOf(Lack.NothingMatches.class,
                leftOut(plan(room, Cases.usual(), ladder(List.of(), any)), "any").lacks().get(0));
    }

    @Test
    void whatABudgetLeavesNoPlaceForIsToldApartFromWhatIsNotWorthIt() {
        Aim aim = new Aim(Resource.TIME, 100, Map.of(Resource.TIME, 4.0), true, false, false, 1);
        Plan plan = plan(stocked(), Cases.with(Cases.usual(), aim), ladder(List.of(), SMALL, LARGE));
        assertEquals(List.of("small"), rungs(plan));
        assertEquals(Why.NO_PLACE, leftOut(plan, "large").why());
    }

    @Test
    void aSecondWireIsDrawnBackForWhatDoesNotNeedIt() {
        Room room = Room.usual().balloon("thick", "3.0 mm", "1.5 mm").has("thick", 1).has("wire-190", 1)
                .has("balloon-1.0", 1);
        Technique beside = on(technique("beside", Axis.MODIFY, tries(1, 0.9), only("balloon", "balloon-1.0")),
                "second-wire");
        Technique thick = technique("thick", Axis.MODIFY, tries(20, 0.5), only("balloon", "thick"));
        // Beside a second wire of 0.36 mm there is no room for 1.5 mm in a lumen of 1.78 mm.
        Plan plan = plan(room, Cases.usual(), ladder(List.of(Moves.secondWire(1)), beside, thick));
        assertEquals(List.of("second-wire", "beside", "thick"), rungs(plan));
        assertEquals(Set.of(Slot.SECOND_WIRE), plan.rungs().get(2).equipment().drawnBack());
        assertEquals(Set.of(), plan.rungs().get(1).equipment().drawnBack());
        assertEquals(Optional.of("wire-190"), plan.rungs().get(2).equipment().after().secondWire());
    }

    @Test
    void whatIsAcrossNeedsNoPlan() {
        Attempt crossed = new Attempt("small", Outcome.CROSSED, Costs.NONE, List.of(), "");
        Ladder ladder = ladder(List.of(), SMALL, LARGE, Moves.technique("look", Axis.DIAGNOSE, List.of()),
                Moves.technique("leave", Axis.LEAVE, List.of()));
        assertEquals(1, plan(stocked(), Cases.usual(), ladder).looks().size());
        Plan plan = plan(stocked(), Cases.usual().logging(crossed), ladder);
        assertTrue(plan.progress().crossed());
        assertEquals(List.of(), plan.rungs());
        assertEquals(List.of(), plan.looks());
        assertEquals(List.of(), plan.exits());
        assertEquals(Why.NOT_NEEDED, leftOut(plan, "large").why());
    }

    @Test
    void aLogThatDoesNotAgreeIsTold() {
        CaseFile file = Cases.usual().logging(Cases.failed("nothing", "balloon", "balloon-9"));
        assertEquals(List.of(Progress.LogProblem.Kind.UNKNOWN_ITEM, Progress.LogProblem.Kind.UNKNOWN_MOVE),
                plan(stocked(), file, ladder(List.of(), SMALL)).progress().problems().stream().map(p -> p.kind())
                        .toList());
    }

    @Test
    void budgetsAreLinesAcrossThePlan() {
        Aim aim = new Aim(Resource.TIME, 100, Map.of(Resource.CONTRAST, 4.0), false, false, false, 1);
        Plan plan = plan(stocked(), Cases.with(Cases.usual(), aim), ladder(List.of(), SMALL, LARGE));
        assertEquals(List.of(false, true),
                plan.rungs().stream().map(r -> r.beyond().contains(Resource.CONTRAST)).toList());
        assertEquals(2 + 0.5 * 3, plan.rungs().get(1).expected().minutes(), 1e-9);
        assertEquals(5, plan.rungs().get(1).worst().minutes(), 1e-9);
    }

    @Test
    void bailOutThatIsNotThereIsFlagged() {
        Plan plan = plan(stocked(), Cases.usual(), ladder(List.of(), SMALL));
        assertFalse(plan.bailOut().get(0).isReady());
        assertInstanceOf(Lack.NothingMatches.class, plan.bailOut().get(0).answer().lacks().get(0));
    }

    @Test
    void stopRulesTellTheRungThatReachesThem() {
        Technique slow = technique("slow", Axis.MODIFY, tries(40, 0.5, 0.5), over("balloon",
                DeviceKind.BALLOON_CATHETER));
        Plan plan = plan(stocked(), Cases.usual(), ladder(List.of(), slow));
        assertFalse(plan.stops().get(0).reached());
        assertEquals(2, plan.stops().get(0).rung().orElseThrow());
        assertTrue(plan.stops().get(1).rung().isEmpty());
    }
}
