/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

import org.ferrule.escalation.technique.Advice;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Chance;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.Hazard;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Need;
import org.ferrule.escalation.technique.Placement;
import org.ferrule.escalation.technique.PlannedTry;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Selection;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.escalation.technique.ShareRange;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.escalation.technique.StopRule;
import org.ferrule.escalation.technique.Task;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Length;

/** Techniques and set-ups in the making. */
public final class Moves {
    private static final Advice OFF_LABEL = new Advice(List.of(), List.of(), Optional.of("beyond rated burst"), "",
            List.of(), SourceRef.NONE);

    private Moves() {
    }

    /** A device of that kind that runs on the main wire to the lesion. */
    public static Role over(String id, DeviceKind kind) {
        return role(id, Selection.ofKinds(Set.of(kind)), Task.PASS, Carrier.MAIN_WIRE, Goal.LESION, false);
    }

    /** One of these devices, on the main wire to the lesion. */
    public static Role only(String id, String... devices) {
        return role(id, ofDevices(devices), Task.PASS, Carrier.MAIN_WIRE, Goal.LESION, false);
    }

    /** Equipment that is no device. */
    public static Role equipment(String word) {
        return role(word, new Selection(Set.of(), Set.of(), LengthRange.ANY, LengthRange.ANY, LengthRange.ANY,
                ShareRange.ANY, Optional.of(word)), Task.STAND_BY, Carrier.NONE, Goal.IN_GUIDE, false);
    }

    /** Devices of these ids. */
    public static Selection ofDevices(String... devices) {
        return new Selection(Set.of(), Set.of(devices), LengthRange.ANY, LengthRange.ANY, LengthRange.ANY,
                ShareRange.ANY, Optional.empty());
    }

    /** Any role. */
    public static Role role(String id, Selection selection, Task task, Carrier carrier, Goal goal, boolean onlyShort) {
        return new Role(id, id, selection, task, carrier, goal, 1, onlyShort);
    }

    /** Tries that each take so many minutes and have these chances. */
    public static List<PlannedTry> tries(double minutes, double... chances) {
        List<PlannedTry> tries = new ArrayList<>();
        for (double chance : chances) {
            tries.add(new PlannedTry(new Costs(minutes, minutes, 10 * minutes, 0),
                    new Chance(0, 0, new Chance.Prior(chance * 10, 10 - chance * 10, "assumed in the test"))));
        }
        return tries;
    }

    /** A technique that needs these roles and nothing else. */
    public static Technique technique(String id, Axis axis, List<PlannedTry> tries, Role... roles) {
        return new Technique(id, id, axis, Hazard.USUAL, List.of(roles), List.of(), Set.of(), Set.of(), tries,
                Advice.NONE);
    }

    /** The same with more that it needs. */
    public static Technique needing(Technique t, Need... needs) {
        return new Technique(t.id(), t.name(), t.axis(), t.hazard(), t.roles(), List.of(needs), t.setups(), t.after(),
                t.tries(), t.advice());
    }

    /** The same on these set-ups. */
    public static Technique on(Technique t, String... setups) {
        return new Technique(t.id(), t.name(), t.axis(), t.hazard(), t.roles(), t.needs(), Set.of(setups), t.after(),
                t.tries(), t.advice());
    }

    /** The same after these techniques. */
    public static Technique after(Technique t, String... after) {
        return new Technique(t.id(), t.name(), t.axis(), t.hazard(), t.roles(), t.needs(), t.setups(), Set.of(after),
                t.tries(), t.advice());
    }

    /** The same with that hazard. */
    public static Technique hazard(Technique t, Hazard hazard) {
        return new Technique(t.id(), t.name(), t.axis(), hazard, t.roles(), t.needs(), t.setups(), t.after(),
                t.tries(), t.advice());
    }

    /** The same outside the label. */
    public static Technique offLabel(Technique t) {
        return new Technique(t.id(), t.name(), t.axis(), t.hazard(), t.roles(), t.needs(), t.setups(), t.after(),
                t.tries(), OFF_LABEL);
    }

    /** A guide extension, 8 cm beyond the guide. */
    public static Setup extension(double minutes) {
        Role role = role("extension", Selection.ofKinds(Set.of(DeviceKind.GUIDE_EXTENSION)), Task.PASS,
                Carrier.MAIN_WIRE, Goal.GUIDE_TIP, false);
        return new Setup("extension", "extension", Hazard.USUAL, List.of(role), List.of(), Set.of(),
                List.of(new Placement(Slot.EXTENSION, "extension", Optional.of(Length.ofMm(80)))),
                new Costs(minutes, 0, 0, 0), false, Advice.NONE);
    }

    /** A second wire beside the first. */
    public static Setup secondWire(double minutes) {
        Role role = role("wire", ofDevices("wire-190"), Task.PASS, Carrier.NONE, Goal.LESION, false);
        return new Setup("second-wire", "second wire", Hazard.USUAL, List.of(role), List.of(), Set.of(),
                List.of(new Placement(Slot.SECOND_WIRE, "wire", Optional.empty())), new Costs(minutes, 0, 0, 0), false,
                Advice.NONE);
    }

    /** The burr's wire, exchanged through a microcatheter, which a balloon holds where the wire is short. */
    public static Setup burrWire(double minutes) {
        Role micro = over("catheter", DeviceKind.MICROCATHETER);
        Role trap = role("trap", Selection.ofKinds(Set.of(DeviceKind.BALLOON_CATHETER)), Task.FILL, Carrier.NONE,
                Goal.IN_GUIDE, true);
        Role wire = role("wire", ofDevices("burr-wire"), Task.PASS, Carrier.NONE, Goal.LESION, false);
        return new Setup("burr-wire", "burr wire", Hazard.USUAL, List.of(micro, trap, wire), List.of(), Set.of(),
                List.of(new Placement(Slot.MAIN_WIRE, "wire", Optional.empty())), new Costs(minutes, 0, 0, 0), true,
                Advice.NONE);
    }

    /** A ladder of these, with nothing else in it. */
    public static Ladder ladder(List<Setup> setups, Technique... techniques) {
        return new Ladder("ladder of the test", "1", Map.of("true-lumen", "seen", "no-dissection", "no dissection"),
                setups, List.of(techniques), List.of(over("covered stent", DeviceKind.COVERED_STENT_SYSTEM)),
                List.of(new StopRule("time", "stop after an hour", Optional.of(Resource.TIME),
                        OptionalDouble.of(60), SourceRef.NONE),
                        new StopRule("watch", "stop at any perforation", Optional.empty(), OptionalDouble.empty(),
                                SourceRef.NONE)));
    }

    /** The ids of moves. */
    public static <T> List<String> ids(List<T> all, Function<T, String> id) {
        return all.stream().map(id).toList();
    }
}
