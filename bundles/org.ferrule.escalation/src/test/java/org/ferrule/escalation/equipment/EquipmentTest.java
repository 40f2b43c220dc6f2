/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.escalation.equipment;

import static org.ferrule.escalation.sample.Moves.ofDevices;
import static org.ferrule.escalation.sample.Moves.only;
import static org.ferrule.escalation.sample.Moves.over;
import static org.ferrule.escalation.sample.Moves.role;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.ferrule.escalation.sample.Cases;
import org.ferrule.escalation.sample.Moves;
import org.ferrule.escalation.sample.Room;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.state.Target;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Need;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Selection;
import org.ferrule.escalation.technique.ShareRange;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.escalation.technique.Task;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** Who plays a role: who is asked, who comes first and why, and what is lacking where nobody can. */
class EquipmentTest {
    private static final Role BALLOON = over("balloon", DeviceKind.BALLOON_CATHETER);
    private static final SystemState SYSTEM = Cases.system("guide-6", "wire-190");

    private static Outfitter outfitter(Room room) {
        return Outfitter.of(room.instruments(), Moves.ladder(List.of()), Cases.usual(), room.stock());
    }

    private static MoveAnswer.Single ask(Room room, Role role) {
        return outfitter(room).role(role, SYSTEM);
    }

    private static List<String> ranked(MoveAnswer.Single answer) {
        return answer.answer().orElseThrow().ranked().stream().map(Candidate::name).toList();
    }

    private static Optional<Choice> choice(MoveAnswer.Single answer) {
        return answer.answer().orElseThrow().choice();
    }

    private static Selection sized(LengthRange diameter, LengthRange length, ShareRange share) {
        return new Selection(Set.of(DeviceKind.BALLOON_CATHETER), Set.of(), diameter, length, LengthRange.ANY, share,
                Optional.empty());
    }

    private static Role sizedRole(Selection selection, Goal goal) {
        return role("balloon", selection, Task.PASS, Carrier.MAIN_WIRE, goal, false);
    }

    private static LengthRange range(double from, double to) {
        return new LengthRange(Optional.of(Length.ofMm(from)), Optional.of(Length.ofMm(to)));
    }

    private static Room balloons() {
        return Room.usual().has("balloon-1.0", 2).has("balloon-1.5", 2).has("balloon-2.5", 2);
    }

    @Test
    void sizesArePickedByNominalDiameterAndLength() {
        assertEquals(List.of("balloon-1.5"), ranked(ask(balloons(), sizedRole(sized(range(1.2, 2), LengthRange.ANY,
                ShareRange.ANY), Goal.LESION))));
        assertEquals(3, ranked(ask(balloons(), sizedRole(sized(LengthRange.ANY, range(15, 15), ShareRange.ANY),
                Goal.LESION))).size());
        assertEquals(List.of(new Lack.NothingMatches(sizedRole(sized(LengthRange.ANY, range(16, 20), ShareRange.ANY),
                Goal.LESION))), ask(balloons(),
                        sizedRole(sized(LengthRange.ANY, range(16, 20), ShareRange.ANY),
                                Goal.LESION))
                        .lacks());
    }

    /** The vessel has 3 mm, the branch 2 mm: a balloon of 1.5 mm is half the one and three quarters of the other. */
    @Test
    void sizesArePickedByTheirShareOfTheVesselOrOfTheBranch() {
        ShareRange half = new ShareRange(OptionalDouble.of(0.45), OptionalDouble.of(0.55));
        assertEquals(List.of("balloon-1.5"),
                ranked(ask(balloons(), sizedRole(sized(LengthRange.ANY, LengthRange.ANY, half), Goal.LESION))));
        assertEquals(List.of("balloon-1.0"),
                ranked(ask(balloons(), sizedRole(sized(LengthRange.ANY, LengthRange.ANY, half), Goal.BRANCH))));
        Target unknown = new Target(Optional.of(Length.ofMm(90)), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), List.of());
        Role role = sizedRole(sized(LengthRange.ANY, LengthRange.ANY, half), Goal.LESION);
        assertFalse(new Sizes(unknown).match(role, balloons().instruments().device("balloon-1.5")),
                "of an unknown vessel nothing is known to be half");
    }

    @Test
    void wiresArePickedByTheirThickestDiameter() {
        Selection thin = new Selection(Set.of(DeviceKind.GUIDEWIRE), Set.of(), LengthRange.ANY, LengthRange.ANY,
                range(0.2, 0.3), ShareRange.ANY, Optional.empty());
        Room room = Room.usual().has("wire-190", 1).has("burr-wire", 1);
        assertEquals(List.of("burr-wire"), ranked(ask(room, role("wire", thin, Task.PASS, Carrier.NONE, Goal.LESION,
                false))));
    }

    @Test
    void theOnlyOneIsSaidToBeTheOnlyOne() {
        assertEquals(Optional.of(Choice.ONLY_ONE), choice(ask(Room.usual().has("balloon-1.0", 2), BALLOON)));
        Room one = Room.usual().balloon("thick", "3.0 mm", "1.9 mm").has("thick", 2).has("balloon-1.0", 2);
        assertEquals(Optional.of(Choice.ONLY_ONE), choice(ask(one, BALLOON)), "where the others cannot pass");
    }

    @Test
    void whatFitsSurelyComesBeforeWhatIsTight() {
        Room room = Room.usual().balloon("tight", "2.0 mm", "1.45 mm").has("tight", 5).has("balloon-2.5", 5);
        MoveAnswer.Single answer = ask(room, BALLOON);
        assertEquals(List.of("balloon-2.5", "tight"), ranked(answer));
        assertEquals(Verdict.TIGHT, answer.answer().orElseThrow().ranked().get(1).suitability().verdict());
        assertEquals(Optional.of(Choice.FITS_SURELY), choice(answer));
    }

    @Test
    void theLastUnitOfAnItemIsLeftOnTheShelfWhereAnotherServes() {
        MoveAnswer.Single answer = ask(Room.usual().has("balloon-1.0", 1).has("balloon-2.5", 2), BALLOON);
        assertEquals(List.of("balloon-2.5", "balloon-1.0"), ranked(answer));
        assertEquals(Optional.of(Choice.NOT_THE_LAST), choice(answer));
    }

    @Test
    void moreClearanceComesFirstThenWhatExpiresFirst() {
        Room two = Room.usual().balloon("large", "3.0 mm", "1.45 mm").balloon("medium", "2.0 mm", "1.44 mm")
                .has("large", 2).has("medium", 2);
        assertEquals(List.of("medium", "large"), ranked(ask(two, BALLOON)));
        assertEquals(Optional.of(Choice.MORE_CLEARANCE), choice(ask(two, BALLOON)));
        Room alike = Room.usual().balloon("same", "1.0 mm", "0.60 mm").has("balloon-1.0", 2, Room.DAY.plusDays(90))
                .has("same", 2, Room.DAY.plusDays(30));
        assertEquals(List.of("same", "balloon-1.0"), ranked(ask(alike, BALLOON)));
        assertEquals(Optional.of(Choice.EXPIRES_FIRST), choice(ask(alike, BALLOON)));
        Room twins = Room.usual().balloon("same", "1.0 mm", "0.60 mm").has("balloon-1.0", 2).has("same", 2);
        assertEquals(Optional.of(Choice.FIRST_IN_LIBRARY), choice(ask(twins, BALLOON)));
        assertEquals("balloon-1.0", ranked(ask(twins, BALLOON)).get(0));
    }

    @Test
    void whatIsLackingIsToldByWhatWouldHelp() {
        assertEquals(List.of(new Lack.NotOnShelf(only("balloon", "balloon-1.0"), List.of("balloon-1.0"))),
                ask(Room.usual(), only("balloon", "balloon-1.0")).lacks());
        assertEquals(List.of(new Lack.NotOnShelf(Moves.equipment("console"), List.of())),
                ask(Room.usual(), Moves.equipment("console")).lacks());
        assertEquals(List.of(), ask(Room.usual().hasEquipment("console"), Moves.equipment("console")).lacks());
        Room old = Room.usual().has("balloon-1.0", 2, Room.DAY.minusDays(2));
        assertEquals(List.of(new Lack.Expired(only("balloon", "balloon-1.0"), "balloon-1.0", Room.DAY.minusDays(2))),
                ask(old, only("balloon", "balloon-1.0")).lacks());
        Room last = Room.usual().has("balloon-1.0", 1, Room.DAY);
        assertEquals(List.of(), ask(last, only("balloon", "balloon-1.0")).lacks(), "usable on the day of expiry");
    }

    @Test
    void severalUnitsMustBeThereTogether() {
        Role two = new Role("balloon", "balloon", ofDevices("balloon-1.0"), Task.PASS, Carrier.MAIN_WIRE, Goal.LESION,
                2, false);
        assertEquals(List.of(new Lack.NotOnShelf(two, List.of("balloon-1.0"))),
                ask(Room.usual().has("balloon-1.0", 1), two).lacks());
        MoveAnswer.Single answer = ask(Room.usual().has("balloon-1.0", 2), two);
        assertEquals(2, answer.answer().orElseThrow().chosen().orElseThrow().supply().picks().get(0).count());
    }

    @Test
    void statementsAndSizesOfTheCaseMustHold() {
        Preconditions stated = new Preconditions(Cases.target(), Map.of("yes", true, "no", false));
        assertEquals(List.of(), lacks(stated, new Need.Fact("yes")));
        assertEquals(List.of(new Lack.FactMissing("no", true)), lacks(stated, new Need.Fact("no")));
        assertEquals(List.of(new Lack.FactMissing("open", false)), lacks(stated, new Need.Fact("open")));
        assertEquals(List.of(), lacks(stated, new Need.Vessel(range(2.5, 3))));
        assertEquals(List.of(new Lack.WrongSize(false, range(3.5, 4), Optional.of(Length.ofMm(3)))),
                lacks(stated, new Need.Vessel(range(3.5, 4))));
        assertEquals(List.of(), lacks(stated, new Need.Branch(range(2, 2.5))));
        assertEquals(List.of(new Lack.WrongSize(true, range(2.5, 4), Optional.of(Length.ofMm(2)))),
                lacks(stated, new Need.Branch(range(2.5, 4))));
    }

    private static List<Lack> lacks(Preconditions preconditions, Need need) {
        return preconditions.lacks(Moves.needing(Moves.technique("t", Axis.MODIFY, Moves.tries(1, 0.5)), need));
    }

    /** A lumen between 1.70 and 1.90 mm, 1.80 mm as labelled. */
    @Test
    void aBalloonHoldsAWireWhereItFillsTheLumenAtItsWidest() {
        Figure lumen = new Figure(Length.ofMm(1.7), Length.ofMm(1.8), Length.ofMm(1.9), false);
        Room room = Room.usual().balloon("wide", "1.9 mm", "0.8 mm").balloon("label", "1.8 mm", "0.8 mm")
                .balloon("slim", "1.79 mm", "0.8 mm");
        assertEquals(Verdict.FITS, filling(room, "wide", Optional.of(lumen)).verdict());
        assertEquals(Verdict.TIGHT, filling(room, "label", Optional.of(lumen)).verdict());
        assertEquals(Verdict.BLOCKED, filling(room, "slim", Optional.of(lumen)).verdict());
        assertEquals(Verdict.UNKNOWN, filling(room, "wide", Optional.empty()).verdict());
        assertEquals(Verdict.UNKNOWN, filling(room, "wire-190", Optional.of(lumen)).verdict());
        assertEquals(Optional.of(Length.ofMm(1.9)), filling(room, "slim", Optional.of(lumen)).lumen());
        assertEquals(Optional.of(Length.ofMm(1.79)), filling(room, "slim", Optional.of(lumen)).diameter());
    }

    private static Filling filling(Room room, String device, Optional<Figure> lumen) {
        return Fillings.of(room.instruments().device(device), lumen);
    }

    @Test
    void whatIsDrawnBackGoesStepByStepAndNeverWhatIsNeeded() {
        SystemState full = SYSTEM.withExtension(new SystemState.PlacedExtension("extension-6", Length.ofMm(30)))
                .withSecondWire("wire-190").withAnchor("balloon-1.0");
        DrawnBack drawnBack = new DrawnBack(Moves.ladder(List.of(Moves.extension(1), Moves.secondWire(1))));
        Set<Slot> beside = Set.of(Slot.ANCHOR, Slot.SECOND_WIRE);
        assertEquals(List.of(Set.of(), beside, Set.of(Slot.EXTENSION),
                Set.of(Slot.ANCHOR, Slot.SECOND_WIRE, Slot.EXTENSION)),
                drawnBack.choices(Moves.technique("t", Axis.MODIFY, List.of(), BALLOON), full));
        assertEquals(List.of(Set.of(), beside), drawnBack.choices(
                Moves.on(Moves.technique("t", Axis.MODIFY, List.of(), BALLOON), "extension"), full));
        assertEquals(List.of(Set.of(), Set.of(Slot.ANCHOR), Set.of(Slot.EXTENSION),
                Set.of(Slot.ANCHOR, Slot.EXTENSION)),
                drawnBack.choices(Moves.technique("t", Axis.MODIFY, List.of(),
                        role("balloon", ofDevices("balloon-1.0"), Task.PASS, Carrier.SECOND_WIRE, Goal.LESION, false)),
                        full));
        assertEquals(List.of(Set.of()), drawnBack.choices(Moves.technique("t", Axis.MODIFY, List.of(), BALLOON),
                SYSTEM), "nothing is there that could be");
        assertEquals(List.of("sheath", "guide-6", "extension-6", "wire-190"), DrawnBack.without(beside, full)
                .devices());
    }

    @Test
    void aLibraryNamesADeviceOnceAndKnowsNoOther() {
        Room twice = Room.usual().add(SampleDevice.rod("micro", DeviceKind.GUIDEWIRE, "190 cm", "0.014 in"));
        assertEquals("two devices are called \"micro\"",
                assertThrows(IllegalArgumentException.class, twice::instruments).getMessage());
        Instruments instruments = Room.usual().instruments();
        assertEquals("no library describes \"none\"",
                assertThrows(IllegalArgumentException.class, () -> instruments.device("none")).getMessage());
        assertEquals(Optional.empty(), instruments.find("none"));
        assertTrue(instruments.devices().contains(instruments.device("micro")));
    }

    @Test
    void whatIsNotKnownOfTheSystemIsToldBeforeAnythingIsAsked() {
        CaseFile file = Cases.usual();
        SystemState wireless = new SystemState(file.system().sheath(), Optional.empty(), "guide-6", Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        assertEquals(List.of(new Lack.NotStated(BALLOON, Lack.Place.MAIN_WIRE)),
                outfitter(balloons()).role(BALLOON, wireless).lacks());
        Role beside = role("balloon", ofDevices("balloon-1.0"), Task.PASS, Carrier.SECOND_WIRE, Goal.LESION, false);
        assertEquals(List.of(new Lack.NotStated(beside, Lack.Place.SECOND_WIRE)), ask(balloons(), beside).lacks());
    }
}
