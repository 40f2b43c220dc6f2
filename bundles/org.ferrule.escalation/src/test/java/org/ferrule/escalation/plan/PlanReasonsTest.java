/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.escalation.plan;

import static org.ferrule.escalation.sample.Moves.after;
import static org.ferrule.escalation.sample.Moves.equipment;
import static org.ferrule.escalation.sample.Moves.hazard;
import static org.ferrule.escalation.sample.Moves.ladder;
import static org.ferrule.escalation.sample.Moves.offLabel;
import static org.ferrule.escalation.sample.Moves.on;
import static org.ferrule.escalation.sample.Moves.only;
import static org.ferrule.escalation.sample.Moves.technique;
import static org.ferrule.escalation.sample.Moves.tries;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.Choice;
import org.ferrule.escalation.equipment.Crossing;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.sample.Cases;
import org.ferrule.escalation.sample.Moves;
import org.ferrule.escalation.sample.Room;
import org.ferrule.escalation.state.Aim;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Hazard;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** What counts in a plan beside minutes: prices, labels, hazards, and what a device has to come through. */
class PlanReasonsTest {
    private static final Technique SMALL = technique("small", Axis.PROFILE, tries(2, 0.5), only("balloon",
            "balloon-1.0"));
    private static final Technique BURR = technique("burr", Axis.MODIFY, tries(10, 0.9), only("burr", "burr-1.25"));
    private static final Aim TIERS = new Aim(Resource.TIME, 100, Map.of(), false, true, false, 1);
    private static final Aim ONE_RISK = new Aim(Resource.TIME, 100, Map.of(), false, false, true, 1);

    private static Plan plan(Room room, CaseFile file, Ladder ladder) {
        return new Planner(room.instruments(), ladder).plan(file, room.stock());
    }

    private static Plan plan(Aim aim, Technique... techniques) {
        return plan(stocked(), Cases.with(Cases.usual(), aim), ladder(List.of(), techniques));
    }

    private static List<String> rungs(Plan plan) {
        return plan.rungs().stream().map(r -> r.move().id()).toList();
    }

    private static LeftOut leftOut(Plan plan, String id) {
        return plan.leftOut().stream().filter(l -> l.move().id().equals(id)).findFirst().orElseThrow();
    }

    private static Room stocked() {
        return Room.usual().has("balloon-1.0", 2).has("balloon-1.5", 2).has("burr-1.25", 1).hasEquipment("console");
    }

    /** A unit costs 10; the console has no price, and stays. Stopping costs 100 more in half of the cases. */
    @Test
    void whereMoneyIsToBeSparedTheUnitsThatAreTakenCount() {
        Technique with = technique("with", Axis.PROFILE, tries(2, 0.5), only("balloon", "balloon-1.0"),
                equipment("console"));
        Plan plan = plan(new Aim(Resource.MONEY, 100, Map.of(), false, false, false, 1), with);
        assertEquals(10 + 0.5 * 100, plan.order().expectedCost(), 1e-9);
        assertEquals(10, plan.rungs().get(0).worst().money(), 1e-9);
        assertEquals(2 + 0.5 * 100, plan(Cases.TIME, with).order().expectedCost(), 1e-9);
    }

    @Test
    void whatIsOutsideTheLabelComesAfterWhatIsNot() {
        Technique better = technique("better", Axis.MODIFY, tries(1, 0.9), only("balloon", "balloon-1.5"));
        assertEquals(List.of("better", "small"), rungs(plan(TIERS, SMALL, better)));
        assertEquals(List.of("small", "better"), rungs(plan(TIERS, SMALL, offLabel(better))));
        assertEquals(List.of("better", "small"), rungs(plan(TIERS, hazard(SMALL, Hazard.HIGH), offLabel(better))));
    }

    /** Between two tries at most one new risk comes in: a hazardous set-up, or a try outside the label on it. */
    @Test
    void afterAHazardousSetupASafeTryComesBeforeOneThatAddsARisk() {
        Technique pushed = on(technique("pushed", Axis.SUPPORT, tries(1, 0.9), only("balloon", "balloon-1.0")),
                "extension");
        assertEquals(List.of("extension", "pushed", "small"), onHazardousExtension(Cases.TIME, offLabel(pushed)));
        assertEquals(List.of("extension", "small", "pushed"), onHazardousExtension(ONE_RISK, offLabel(pushed)));
        assertEquals(List.of("extension", "pushed", "small"),
                onHazardousExtension(ONE_RISK, hazard(pushed, Hazard.HIGH)));
    }

    private static List<String> onHazardousExtension(Aim aim, Technique pushed) {
        Setup e = Moves.extension(1);
        Setup hazardous = new Setup(e.id(), e.name(), Hazard.HIGH, e.roles(), e.needs(), e.setups(),
                e.placements(), e.costs(), e.exchangesWire(), e.advice());
        return rungs(plan(stocked().has("extension-6", 1), Cases.with(Cases.usual(), aim),
                ladder(List.of(hazardous), pushed, SMALL)));
    }

    @Test
    void whatComesAfterAnotherWaitsUntilThatWasTried() {
        Technique later = after(technique("later", Axis.MODIFY, tries(1, 0.9), only("balloon", "balloon-1.5")),
                "small");
        assertEquals(List.of("small", "later"), rungs(plan(Cases.TIME, later, SMALL)));
        CaseFile tried = Cases.usual().logging(Cases.failed("small", "balloon", "balloon-1.0"));
        assertEquals(List.of("later"), rungs(plan(stocked(), tried, ladder(List.of(), later, SMALL))));
    }

    /** The burr's lumen of 0.012 in does not take the wire of 0.014 in; another guide would not help. */
    @Test
    void whatDoesNotRunOnTheWireIsToldAsSuch() {
        LeftOut left = leftOut(plan(stocked().has("guide-7", 1), Cases.usual(), ladder(List.of(), BURR)), "burr");
        Lack.DoesNotPass lack = (Lack.DoesNotPass) left.lacks().get(0);
        Crossing crossing = lack.nearest().suitability().deciding().orElseThrow();
        assertEquals(Crossing.Way.WIRE, crossing.way());
        assertEquals(Verdict.BLOCKED, crossing.verdict());
        assertEquals(List.of(), left.remedies());
        assertEquals(List.of("burr"), rungs(plan(stocked(),
                Cases.of(Cases.system("guide-6", "burr-wire"), Map.of("true-lumen", true), Cases.TIME),
                ladder(List.of(), BURR))));
    }

    /** A balloon of 1.44 mm goes through the guide of 1.78 mm, but not through an extension of 1.42 mm in it. */
    @Test
    void eachStepTellsWhetherWhatIsToBeDeliveredStillPasses() {
        Room room = stocked().balloon("thick", "3.0 mm", "1.44 mm").has("thick", 1).has("extension-6", 1);
        Technique pushed = on(technique("pushed", Axis.SUPPORT, tries(1, 0.9), only("balloon", "balloon-1.0")),
                "extension");
        CaseFile usual = Cases.usual();
        CaseFile thick = new CaseFile(usual.title(), usual.day(), usual.system(), usual.target(),
                Optional.of("thick"), usual.facts(), usual.aim(), usual.spent(), usual.log());
        Ladder ladder = ladder(List.of(Moves.extension(1)), pushed);
        Plan plan = plan(room, thick, ladder);
        assertTrue(plan.delivery().orElseThrow().answer().orElseThrow().ranked().get(0).suitability().isUsable());
        assertEquals(List.of("extension", "pushed"), rungs(plan));
        assertEquals(List.of(Optional.of(Verdict.BLOCKED), Optional.of(Verdict.BLOCKED)),
                plan.rungs().stream().map(Rung::delivery).toList());
        Plan nothing = plan(room, usual, ladder);
        assertEquals(Optional.empty(), nothing.delivery());
        assertEquals(Optional.empty(), nothing.rungs().get(0).delivery());
    }

    @Test
    void ofTwoExtensionsTheOneThatLeavesMoreRoomIsTaken() {
        Room room = Room.usual().has("extension-6", 2).has("wide", 2).has("balloon-1.0", 1)
                .add(SampleDevice.device("wide", DeviceKind.GUIDE_EXTENSION).size("6 Fr").length("150 cm")
                        .section("tube", "0 mm", "25 cm", "0.067 in").section("rod", "25 cm", "150 cm", "0.5 mm")
                        .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 mm", "25 cm")
                        .bore("0 mm", "25 cm", "0.058 in"));
        Technique pushed = on(technique("pushed", Axis.SUPPORT, tries(1, 0.9), only("balloon", "balloon-1.0")),
                "extension");
        RoleAnswer extension = plan(room, Cases.usual(), ladder(List.of(Moves.extension(1)), pushed)).rungs().get(0)
                .equipment().roles().get(0);
        assertEquals(Optional.of("wide"), extension.chosen().orElseThrow().device());
        assertEquals(Optional.of(Choice.LARGER_LUMEN), extension.choice());
    }

    @Test
    void ofTwoWaysThatAreAlikeTheWayInDecides() {
        Crossing crossing = plan(Cases.TIME, SMALL).rungs().get(0).equipment().roles().get(0).chosen().orElseThrow()
                .suitability().deciding().orElseThrow();
        assertEquals(crossing.answer().in().verdict(), crossing.answer().out().verdict());
        assertSame(crossing.answer().in(), crossing.deciding());
    }

    @Test
    void whatIsToBeObtainedIsTheDeviceWhateverItsItemIsCalled() {
        Room expired = Room.usual().has("drawer 7", "balloon-1.0", 1, Room.DAY.minusDays(1));
        assertEquals(List.of(new Remedy.Obtain("balloon-1.0")),
                leftOut(plan(expired, Cases.usual(), ladder(List.of(), SMALL)), "small").remedies());
        Technique again = after(technique("again", Axis.PROFILE, tries(3, 0.2), only("balloon", "balloon-1.0")),
                "small");
        Room single = Room.usual().has("drawer 7", "balloon-1.0", 1, Room.DAY.plusDays(1));
        LeftOut left = leftOut(plan(single, Cases.usual(), ladder(List.of(), SMALL, again)), "again");
        assertEquals(new Lack.UsedUp(again.roles().get(0), "drawer 7"), left.lacks().get(0));
        assertEquals(List.of(new Remedy.Obtain("balloon-1.0")), left.remedies());
    }

    /** Nothing on the shelf for the extension, so what stands on it goes too. */
    @Test
    void setupThatCannotBeDoneTakesWithItWhatStandsOnIt() {
        Technique pushed = on(technique("pushed", Axis.SUPPORT, tries(1, 0.9), only("balloon", "balloon-1.5")),
                "extension");
        Plan plan = plan(stocked(), Cases.usual(), ladder(List.of(Moves.extension(1)), SMALL, pushed));
        assertEquals(List.of("small"), rungs(plan));
        assertTrue(leftOut(plan, "pushed").lacks().contains(new Lack.SetupImpossible("extension")));
        assertEquals(Set.of("extension", "pushed"),
                Set.copyOf(plan.leftOut().stream().map(l -> l.move().id()).toList()));
    }
}
