/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.escalation.plan;

import static org.ferrule.escalation.sample.Moves.ladder;
import static org.ferrule.escalation.sample.Moves.ofDevices;
import static org.ferrule.escalation.sample.Moves.only;
import static org.ferrule.escalation.sample.Moves.technique;
import static org.ferrule.escalation.sample.Moves.tries;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Outfitter;
import org.ferrule.escalation.sample.Cases;
import org.ferrule.escalation.sample.Moves;
import org.ferrule.escalation.sample.Room;
import org.ferrule.escalation.state.Aim;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Selection;
import org.ferrule.escalation.technique.ShareRange;
import org.ferrule.escalation.technique.Task;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** What stands in a plan beside its steps, what steps cost, and what is lacking where some of it is there. */
class PlanFiguresTest {
    private static final Technique SMALL = technique("small", Axis.PROFILE, tries(2, 0.5), only("balloon",
            "balloon-1.0"));

    private static Plan plan(Room room, Aim aim, Technique... techniques) {
        return new Planner(room.instruments(), ladder(List.of(), techniques)).plan(Cases.with(Cases.usual(), aim),
                room.stock());
    }

    private static Room stocked() {
        return Room.usual().has("balloon-1.0", 4);
    }

    private static Aim limited(double minutes) {
        return new Aim(Resource.TIME, 100, Map.of(Resource.TIME, minutes), false, false, false, 1);
    }

    private static Set<Resource> beyond(double limit) {
        return plan(stocked(), limited(limit), SMALL).rungs().get(0).beyond();
    }

    @Test
    void aLimitThatIsMetExactlyIsNotPassed() {
        assertEquals(Set.of(), beyond(2));
        assertEquals(Set.of(Resource.TIME), beyond(1.99));
    }

    @Test
    void whatIsLookedAtAndWhatEndsItIsNoStep() {
        Technique look = technique("look", Axis.DIAGNOSE, List.of());
        Technique tried = technique("look-and-try", Axis.DIAGNOSE, tries(9, 0.1), only("balloon", "balloon-1.0"));
        Technique leave = technique("leave", Axis.LEAVE, List.of());
        Plan plan = plan(stocked(), Cases.TIME, look, SMALL, tried, leave);
        assertEquals(List.of(look), plan.looks());
        assertEquals(List.of(leave), plan.exits());
        assertEquals(List.of("small", "look-and-try"), Moves.ids(plan.rungs(), r -> r.move().id()));
    }

    @Test
    void aStepKnowsThatItIsOutsideTheLabelAndWhatMustBeAtHandWhetherItIs() {
        assertTrue(plan(stocked(), Cases.TIME, Moves.offLabel(SMALL)).rungs().get(0).isOffLabel());
        Plan plan = plan(stocked(), Cases.TIME, SMALL);
        assertFalse(plan.rungs().get(0).isOffLabel());
        BailOut covered = plan.bailOut().get(0);
        assertFalse(covered.isReady());
        assertTrue(new BailOut(covered.role(), new MoveAnswer.Single(Optional.empty(), List.of())).isReady());
    }

    @Test
    void everyOutcomeHasAWordOfItsOwn() {
        List<String> words = Arrays.stream(Outcome.values()).map(Outcome::word).distinct().toList();
        assertEquals(Outcome.values().length, words.size());
        assertTrue(words.stream().noneMatch(String::isBlank), words::toString);
    }

    /** A unit costs 10. */
    @Test
    void severalUnitsCostSeveralTimesAsMuch() {
        Role two = new Role("balloon", "balloon", ofDevices("balloon-1.0"), Task.PASS, Carrier.MAIN_WIRE, Goal.LESION,
                3,
                false);
        Technique kissing = technique("kissing", Axis.PROFILE, tries(2, 0.5), two);
        assertEquals(30, plan(stocked(), Cases.TIME, kissing).rungs().get(0).worst().money());
        assertEquals(10, plan(stocked(), Cases.TIME, SMALL).rungs().get(0).worst().money());
    }

    /** 1.9 mm in a guide of 0.070 in (1.778 mm). */
    @Test
    void ofWhatIsThereItIsToldWhatDoesNotPassAndOfTheRestThatItIsNotThere() {
        Room room = Room.usual().balloon("thick", "3 mm", "1.9 mm").has("thick", 1);
        MoveAnswer.Single answer = Outfitter
                .of(room.instruments(), Moves.ladder(List.of()), Cases.usual(), room.stock())
                .role(only("balloon", "thick", "balloon-1.0"), Cases.system("guide-6", "wire-190"));
        assertEquals(2, answer.lacks().size(), () -> answer.lacks().toString());
        assertEquals("thick", assertInstanceOf(Lack.DoesNotPass.class, answer.lacks().get(0)).nearest().name());
        assertEquals(List.of("balloon-1.0"),
                assertInstanceOf(Lack.NotOnShelf.class, answer.lacks().get(1)).wouldServe());
    }

    private static SampleDevice sized(String id, Optional<Parts.StentPart> stent, Optional<Parts.CutterPart> cutter) {
        return SampleDevice.balloon(id, "1.0 mm", "0.7 mm").parts(new Parts(Optional.empty(), stent, cutter,
                Optional.empty(), List.of(), Optional.empty()));
    }

    private static SampleDevice stent(String id, String diameter) {
        return sized(id, Optional.of(new Parts.StentPart("stent", Optional.of(Dimension.lenient(diameter)),
                Optional.of(Dimension.lenient("18 mm")), Optional.empty())), Optional.empty());
    }

    private static List<String> picked(Room room, LengthRange diameter, LengthRange length) {
        Selection selection = new Selection(Set.of(DeviceKind.BALLOON_CATHETER), Set.of(), diameter, length,
                LengthRange.ANY, ShareRange.ANY, Optional.empty());
        return Outfitter.of(room.instruments(), Moves.ladder(List.of()), Cases.usual(), room.stock())
                .role(new Role("sized", "sized", selection, Task.PASS, Carrier.MAIN_WIRE, Goal.LESION, 1, false),
                        Cases.system("guide-6", "wire-190"))
                .answer().stream().flatMap(answer -> answer.ranked().stream()).map(Candidate::name).toList();
    }

    private static LengthRange range(double from, double to) {
        return new LengthRange(Optional.of(Length.ofMm(from)), Optional.of(Length.ofMm(to)));
    }

    @Test
    void stentsArePickedByTheirNominalDiameterAndLengthToo() {
        Room room = Room.usual().add(stent("stent-2.5", "2.5 mm")).add(stent("stent-3", "3 mm")).has("stent-2.5", 1)
                .has("stent-3", 1);
        assertEquals(List.of("stent-3"), picked(room, range(2.9, 3.1), range(18, 18)));
        assertEquals(List.of(), picked(room, range(2.9, 3.1), range(19, 20)));
    }

    @Test
    void cuttersArePickedByTheirDiameter() {
        Room room = Room.usual().add(sized("cutter", Optional.empty(), Optional.of(
                new Parts.CutterPart("burr", Optional.of(Dimension.lenient("1.75 mm")))))).has("cutter", 1);
        assertEquals(List.of("cutter"), picked(room, range(1.74, 1.76), LengthRange.ANY));
        assertEquals(List.of(), picked(room, range(1.76, 1.8), LengthRange.ANY));
    }
}
