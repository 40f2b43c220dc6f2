/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.escalation.technique;

import static org.ferrule.escalation.sample.Moves.on;
import static org.ferrule.escalation.sample.Moves.only;
import static org.ferrule.escalation.sample.Moves.technique;
import static org.ferrule.escalation.sample.Moves.tries;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.ferrule.escalation.sample.Moves;
import org.ferrule.escalation.state.Aim;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What the parts of a ladder hold, tell and refuse. */
class TechniqueValuesTest {
    private static final Chance.Prior PRIOR = new Chance.Prior(2, 3, "assumed in the test");

    private static String refusal(Executable executable) {
        return assertThrows(IllegalArgumentException.class, executable).getMessage();
    }

    private static Optional<Length> mm(double mm) {
        return Optional.of(Length.ofMm(mm));
    }

    /** Two of five assumed, one of one counted: three of six. */
    @Test
    void aChanceIsTheMeanOfWhatIsAssumedAndCounted() {
        Chance chance = new Chance(0, 0, PRIOR);
        assertEquals(0.4, chance.mean(), 1e-12);
        assertFalse(chance.isCounted());
        assertEquals(new Chance(1, 0, PRIOR), chance.counting(true));
        assertEquals(new Chance(0, 1, PRIOR), chance.counting(false));
        assertEquals(0.5, chance.counting(true).mean(), 1e-12);
        assertEquals(2.0 / 6, chance.counting(false).mean(), 1e-12);
        assertTrue(chance.counting(true).isCounted() && chance.counting(false).isCounted());
    }

    @Test
    void aPriorNeedsCountsAboveZeroAndAnAuthor() {
        assertEquals("a prior needs counts above 0, not 0.0 to 1.0", refusal(() -> new Chance.Prior(0, 1, "who")));
        refusal(() -> new Chance.Prior(1, 0, "who"));
        refusal(() -> new Chance.Prior(1, Double.POSITIVE_INFINITY, "who"));
        refusal(() -> new Chance.Prior(Double.NaN, 1, "who"));
        assertEquals("the prior of 1.0 to 2.0 does not say whose it is", refusal(() -> new Chance.Prior(1, 2, " ")));
        assertEquals("counts cannot be -1 and 0", refusal(() -> new Chance(-1, 0, PRIOR)));
        refusal(() -> new Chance(0, -1, PRIOR));
    }

    @Test
    void rangesHoldTheirEnds() {
        LengthRange range = new LengthRange(mm(2), mm(3));
        assertTrue(range.contains(Length.ofMm(2)) && range.contains(Length.ofMm(3)));
        assertFalse(range.contains(Length.ofMm(1.999)) || range.contains(Length.ofMm(3.001)));
        assertTrue(new LengthRange(mm(2), Optional.empty()).contains(Length.ofMm(50)));
        assertTrue(new LengthRange(Optional.empty(), mm(3)).contains(Length.ZERO));
        assertTrue(LengthRange.ANY.isAny());
        assertFalse(range.isAny() || new LengthRange(mm(2), Optional.empty()).isAny()
                || new LengthRange(Optional.empty(), mm(2)).isAny());
        assertEquals("a range is out of order: 3.0 to 2.0 mm", refusal(() -> new LengthRange(mm(3), mm(2))));
        assertEquals(mm(2), new LengthRange(mm(2), mm(2)).from());
    }

    @Test
    void rangesOfSharesHoldTheirEnds() {
        ShareRange range = new ShareRange(OptionalDouble.of(0.8), OptionalDouble.of(1.1));
        assertTrue(range.contains(0.8) && range.contains(1.1));
        assertFalse(range.contains(0.79) || range.contains(1.11));
        assertTrue(new ShareRange(OptionalDouble.empty(), OptionalDouble.of(1)).contains(0.01));
        assertTrue(new ShareRange(OptionalDouble.of(1), OptionalDouble.empty()).contains(9));
        assertTrue(ShareRange.ANY.isAny());
        assertFalse(range.isAny() || new ShareRange(OptionalDouble.of(1), OptionalDouble.empty()).isAny()
                || new ShareRange(OptionalDouble.empty(), OptionalDouble.of(1)).isAny());
        refusal(() -> new ShareRange(OptionalDouble.of(0), OptionalDouble.empty()));
        refusal(() -> new ShareRange(OptionalDouble.empty(), OptionalDouble.of(0)));
        refusal(() -> new ShareRange(OptionalDouble.of(1.1), OptionalDouble.of(1)));
        assertEquals(OptionalDouble.of(1), new ShareRange(OptionalDouble.of(1), OptionalDouble.of(1)).to());
    }

    @Test
    void aSelectionNamesDevicesOrEquipmentButNotBoth() {
        assertEquals("a role names neither a kind, nor a device, nor equipment",
                refusal(() -> selection(Set.of(), Set.of(), Optional.empty())));
        assertEquals("a role asks for the equipment \"console\" and for a device: only one of both can be meant",
                refusal(() -> selection(Set.of(DeviceKind.GUIDEWIRE), Set.of(), Optional.of("console"))));
        refusal(() -> selection(Set.of(), Set.of("wire"), Optional.of("console")));
        assertEquals(Set.of("wire"), selection(Set.of(), Set.of("wire"), Optional.empty()).devices());
        assertEquals(Set.of(DeviceKind.GUIDEWIRE), Selection.ofKinds(Set.of(DeviceKind.GUIDEWIRE)).kinds());
    }

    private static Selection selection(Set<DeviceKind> kinds, Set<String> devices, Optional<String> equipment) {
        return new Selection(kinds, devices, LengthRange.ANY, LengthRange.ANY, LengthRange.ANY, ShareRange.ANY,
                equipment);
    }

    @Test
    void costsAddUpResourceByResource() {
        Costs costs = new Costs(1, 2, 3, 4).plus(new Costs(10, 20, 30, 40));
        assertEquals(List.of(11.0, 22.0, 33.0, 44.0), List.of(costs.of(Resource.TIME), costs.of(Resource.CONTRAST),
                costs.of(Resource.DOSE), costs.of(Resource.MONEY)));
        assertEquals(new Costs(0.5, 1, 1.5, 2), new Costs(1, 2, 3, 4).times(0.5));
        refusal(() -> new Costs(-1, 0, 0, 0));
        refusal(() -> new Costs(0, Double.NaN, 0, 0));
        refusal(() -> new Costs(0, 0, Double.POSITIVE_INFINITY, 0));
    }

    @Test
    void aLadderIsAskedByTheIdsOfItsMoves() {
        Technique first = technique("first", Axis.MODIFY, tries(1, 0.5), only("balloon", "b"));
        Ladder ladder = Moves.ladder(List.of(Moves.extension(1)), first);
        assertEquals(first, ladder.technique("first"));
        assertEquals("extension", ladder.setup("extension").name());
        assertEquals("no technique is called \"extension\"", refusal(() -> ladder.technique("extension")));
        assertEquals("no set-up is called \"first\"", refusal(() -> ladder.setup("first")));
    }

    @Test
    void setupsOfAMoveAreAllThatItRestsOnInTheOrderOfTheLadder() {
        Setup below = Moves.secondWire(1);
        Setup upper = new Setup("upper", "upper", Hazard.USUAL, List.of(), List.of(), Set.of("second-wire"), List.of(),
                Costs.NONE, false, Advice.NONE);
        Technique move = on(technique("move", Axis.MODIFY, tries(1, 0.5), only("balloon", "b")), "upper");
        Ladder ladder = Moves.ladder(List.of(upper, Moves.extension(1), below), move);
        assertEquals(List.of(upper, below), ladder.setupsOf(move));
        assertEquals(List.of(below), ladder.setupsOf(upper));
        assertEquals(List.of(), ladder.setupsOf(below));
    }

    @Test
    void aLadderRefusesWhatNobodyDescribes() {
        Technique move = technique("move", Axis.MODIFY, tries(1, 0.5), only("balloon", "b"));
        assertEquals("two moves are called \"move\"", refusal(() -> Moves.ladder(List.of(), move, move)));
        assertEquals("\"move\" needs the set-up \"none\", which nobody describes",
                refusal(() -> Moves.ladder(List.of(), on(move, "none"))));
        assertEquals("\"move\" needs the technique \"none\", which nobody describes",
                refusal(() -> Moves.ladder(List.of(), Moves.after(move, "none"))));
        assertEquals("\"move\" needs the fact \"none\", which nobody describes",
                refusal(() -> Moves.ladder(List.of(), Moves.needing(move, new Need.Fact("none")))));
    }

    @Test
    void partsOfALadderRefuseWhatContradictsItself() {
        assertEquals("the role \"r\" asks for 0 devices", refusal(() -> new Role("r", "r",
                Selection.ofKinds(Set.of(DeviceKind.GUIDEWIRE)), Task.PASS, Carrier.NONE, Goal.LESION, 0, false)));
        String protrudes = "how far the device of \"r\" protrudes must be said of an extension, and of nothing else";
        assertEquals(protrudes, refusal(() -> new Placement(Slot.EXTENSION, "r", Optional.empty())));
        assertEquals(protrudes, refusal(() -> new Placement(Slot.ANCHOR, "r", mm(1))));
        assertEquals("the set-up \"s\" leaves \"r\" in place, but has no such role",
                refusal(() -> new Setup("s", "s", Hazard.USUAL, List.of(), List.of(), Set.of(),
                        List.of(new Placement(Slot.ANCHOR, "r", Optional.empty())), Costs.NONE, false, Advice.NONE)));
        assertEquals("the stop rule \"s\" needs a resource and a limit, or neither", refusal(() -> new StopRule("s",
                "stop", Optional.of(Resource.TIME), OptionalDouble.empty(), SourceRef.NONE)));
        refusal(() -> new StopRule("s", "stop", Optional.empty(), OptionalDouble.of(1), SourceRef.NONE));
    }

    @Test
    void anAimRefusesWhatCannotBeWeighed() {
        assertEquals("the cost of stopping cannot be -1.0", refusal(() -> aim(-1, 1, Map.of())));
        refusal(() -> aim(Double.POSITIVE_INFINITY, 1, Map.of()));
        assertEquals("the discount of the same axis lies above 0 and up to 1, not 0.0",
                refusal(() -> aim(1, 0, Map.of())));
        refusal(() -> aim(1, 1.01, Map.of()));
        assertTrue(refusal(() -> aim(1, 1, Map.of(Resource.TIME, -1.0))).startsWith("the budget of "));
        assertEquals(Map.of(Resource.TIME, 0.0), aim(0, 1, Map.of(Resource.TIME, 0.0)).budgets());
    }

    private static Aim aim(double stopping, double discount, Map<Resource, Double> budgets) {
        return new Aim(Resource.TIME, stopping, budgets, false, false, false, discount);
    }

    @Test
    void wordsOfDocumentsAreReadBack() {
        for (Axis value : Axis.values()) {
            assertEquals(value, Axis.ofWord(value.word()));
        }
        for (Slot value : Slot.values()) {
            assertEquals(value, Slot.ofWord(value.word()));
        }
        for (Goal value : Goal.values()) {
            assertEquals(value, Goal.ofWord(value.word()));
        }
        for (Task value : Task.values()) {
            assertEquals(value, Task.ofWord(value.word()));
        }
        for (Carrier value : Carrier.values()) {
            assertEquals(value, Carrier.ofWord(value.word()));
        }
        for (Hazard value : Hazard.values()) {
            assertEquals(value, Hazard.ofWord(value.word()));
        }
        for (Resource value : Resource.values()) {
            assertEquals(value, Resource.ofWord(value.word()));
        }
        assertEquals("no axis is called \"up\"", refusal(() -> Axis.ofWord("up")));
        assertEquals("no slot is called \"up\"", refusal(() -> Slot.ofWord("up")));
        assertEquals("no goal is called \"up\"", refusal(() -> Goal.ofWord("up")));
        assertEquals("no task is called \"up\"", refusal(() -> Task.ofWord("up")));
        assertEquals("no carrier is called \"up\"", refusal(() -> Carrier.ofWord("up")));
        assertEquals("no hazard is called \"up\"", refusal(() -> Hazard.ofWord("up")));
    }
}
