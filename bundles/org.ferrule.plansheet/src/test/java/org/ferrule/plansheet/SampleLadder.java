/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet;

import static org.ferrule.chart.DeviceMaker.mm;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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

/** A ladder for a balloon that does not cross, with invented figures. */
final class SampleLadder {
    private static final SourceRef PRACTICE = new SourceRef("Common practice", "", "");
    private static final Chance.Prior PRIOR = new Chance.Prior(1, 1, "nobody knows better");

    private SampleLadder() {
    }

    static Ladder ladder() {
        return new Ladder("Balloon does not cross", "3", facts(), List.of(extension(), secondWire()), techniques(),
                List.of(role("covered", "covered stent", DeviceKind.COVERED_STENT_SYSTEM, Carrier.MAIN_WIRE),
                        role("tamponade", "balloon to stop a leak", DeviceKind.BALLOON_CATHETER, Carrier.MAIN_WIRE),
                        role("imaging", "imaging catheter", DeviceKind.IMAGING_CATHETER, Carrier.NONE),
                        role("coil", "microcatheter for coils", DeviceKind.MICROCATHETER, Carrier.MAIN_WIRE)),
                stopRules());
    }

    /** A ladder of many techniques that can all be done, with a lot to say of each. */
    static Ladder longLadder() {
        List<Technique> many = new ArrayList<>();
        for (int i = 1; i <= 9; i++) {
            Advice advice = new Advice(
                    List.of("the proximal cap is dented", "what was beside the wire is pressed aside"),
                    List.of("the tip can break off when it is turned too often",
                            "the wire must not lose its place in the distal vessel while this is done",
                            "contrast that is left in the balloon makes it thicker"),
                    i % 4 == 0 ? Optional.of("beyond the rated burst pressure of the balloon") : Optional.empty(),
                    "three passes without any progress", List.of(), PRACTICE);
            many.add(new Technique("way-" + i, "A way with a long name, number " + i + " of many", Axis.PROFILE,
                    i % 4 == 0 ? Hazard.RAISED : Hazard.USUAL,
                    List.of(balloon("b10"), role("wire", "buddy wire", DeviceKind.GUIDEWIRE, Carrier.NONE)), List.of(),
                    Set.of(), Set.of(), tries(2, 5 + i), advice));
        }
        return new Ladder("A long ladder", "1", facts(), List.of(extension(), secondWire()), many,
                ladder().bailOut(), stopRules());
    }

    /** A ladder of so many techniques of one try and one caution each. */
    static Ladder ladderOf(int techniques) {
        List<Technique> many = new ArrayList<>();
        for (int i = 1; i <= techniques; i++) {
            many.add(technique("way-" + i, "Small balloon, way " + i, Axis.PROFILE, Hazard.USUAL,
                    List.of(balloon("b10")), Set.of(), 1, 5 + i, new Advice(List.of(), List.of("mind the wire"),
                            Optional.empty(), "three passes", List.of(), PRACTICE)));
        }
        return new Ladder("As many as are asked for", "1", facts(), List.of(), many, ladder().bailOut(), stopRules());
    }

    private static Map<String, String> facts() {
        return Map.of("true-lumen", "The wire is seen in the distal true lumen in two orthogonal views", "no-ostial",
                "There is no disease at the ostium", "staff", "Somebody in the room is trained in it");
    }

    private static Setup extension() {
        return new Setup("extension", "Guide extension in place", Hazard.RAISED,
                List.of(new Role("extension", "guide extension", kind(DeviceKind.GUIDE_EXTENSION), Task.PASS,
                        Carrier.MAIN_WIRE, Goal.GUIDE_TIP, 1, false)),
                List.of(new Need.Fact("no-ostial")), Set.of(),
                List.of(new Placement(Slot.EXTENSION, "extension", Optional.of(mm(80)))), new Costs(6, 5, 60, 0),
                false, new Advice(List.of("all that follows passes the extension"),
                        List.of("pressure may be damped: watch it"), Optional.empty(),
                        "it does not advance without force", List.of(), PRACTICE));
    }

    private static Setup secondWire() {
        return new Setup("second", "Second wire beside the first", Hazard.USUAL,
                List.of(role("second", "second wire", DeviceKind.GUIDEWIRE, Carrier.NONE)), List.of(), Set.of(),
                List.of(new Placement(Slot.SECOND_WIRE, "second", Optional.empty())), new Costs(5, 6, 40, 0), false,
                Advice.NONE);
    }

    private static List<Technique> techniques() {
        Advice rupture = new Advice(List.of("makes small dissections in the cap"),
                List.of("only a small balloon without air; perforation", "the balloon can be caught"),
                Optional.of("beyond the rated burst pressure"), "one balloon", List.of(), PRACTICE);
        return List.of(look("look", "See where it stops, in two views", Axis.DIAGNOSE),
                technique("small", "Small balloon", Axis.PROFILE, Hazard.USUAL, List.of(balloon("b10")), Set.of(),
                        3, 5, Advice.NONE),
                technique("micro", "Microcatheter turned through", Axis.MODIFY, Hazard.USUAL,
                        List.of(role("micro", "microcatheter", DeviceKind.MICROCATHETER, Carrier.MAIN_WIRE)),
                        Set.of(), 1, 8,
                        new Advice(List.of("leaves a channel"), List.of("no more than ten turns one way"),
                                Optional.empty(), "ten minutes", List.of(), PRACTICE)),
                technique("supported", "Small balloon through the extension", Axis.SUPPORT, Hazard.USUAL,
                        List.of(balloon("b10")), Set.of("extension"), 2, 4, Advice.NONE),
                technique("cut", "Balloon pressed on the second wire", Axis.MODIFY, Hazard.RAISED,
                        List.of(balloon("b15")), Set.of("second"), 1, 7, Advice.NONE),
                technique("rupture", "Balloon burst in the cap on purpose", Axis.MODIFY, Hazard.RAISED,
                        List.of(balloon("b10")), Set.of(), 1, 6, rupture),
                technique("laser", "Laser", Axis.MODIFY, Hazard.HIGH,
                        List.of(equipment(), role("laser", "laser catheter", DeviceKind.LASER_CATHETER,
                                Carrier.MAIN_WIRE)),
                        Set.of(), 1, 20, Advice.NONE),
                technique("burr", "Burr 1.75", Axis.MODIFY, Hazard.HIGH,
                        List.of(role("burr", "burr", DeviceKind.ROTATIONAL_BURR, Carrier.MAIN_WIRE)), Set.of(), 1, 25,
                        Advice.NONE),
                look("stop", "Stop, and come back another day", Axis.LEAVE));
    }

    private static Technique look(String id, String name, Axis axis) {
        return technique(id, name, axis, Hazard.USUAL, List.of(), Set.of(), 0, 0, Advice.NONE);
    }

    private static Technique technique(String id, String name, Axis axis, Hazard hazard, List<Role> roles,
            Set<String> setups, int tries, double minutes, Advice advice) {
        return new Technique(id, name, axis, hazard, roles, List.of(), setups, Set.of(), tries(tries, minutes), advice);
    }

    private static List<PlannedTry> tries(int count, double minutes) {
        List<PlannedTry> tries = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            tries.add(new PlannedTry(new Costs(minutes, 8, 50, 0), new Chance(k == 0 ? 3 : 0, k == 0 ? 4 : 0,
                    new Chance.Prior(PRIOR.successes(), PRIOR.failures() + k, PRIOR.label()))));
        }
        return tries;
    }

    static Role role(String id, String name, DeviceKind kind, Carrier carrier) {
        return new Role(id, name, kind(kind), Task.PASS, carrier, Goal.LESION, 1, false);
    }

    private static Role balloon(String device) {
        Selection only = new Selection(new LinkedHashSet<>(), Set.of(device), LengthRange.ANY, LengthRange.ANY,
                LengthRange.ANY, ShareRange.ANY, Optional.empty());
        return new Role("balloon", "small balloon", only, Task.PASS, Carrier.MAIN_WIRE, Goal.LESION, 1, false);
    }

    private static Role equipment() {
        Selection console = new Selection(Set.of(), Set.of(), LengthRange.ANY, LengthRange.ANY, LengthRange.ANY,
                ShareRange.ANY, Optional.of("laser generator"));
        return new Role("console", "laser generator", console, Task.STAND_BY, Carrier.NONE, Goal.IN_GUIDE, 1, false);
    }

    private static Selection kind(DeviceKind kind) {
        return Selection.ofKinds(Set.of(kind));
    }

    private static List<StopRule> stopRules() {
        return List.of(
                new StopRule("contrast", "Contrast: stop at the limit of the laboratory",
                        Optional.of(Resource.CONTRAST), java.util.OptionalDouble.of(60), PRACTICE),
                new StopRule("leak", "Any leak, loss of a side branch or fall of pressure: stop and treat it",
                        Optional.empty(), java.util.OptionalDouble.empty(), PRACTICE));
    }
}
