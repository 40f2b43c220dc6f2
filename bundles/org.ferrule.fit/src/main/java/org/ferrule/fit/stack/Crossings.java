/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.fit.rules.Limits;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Length;

/** Makes the questions of one level of a stack. */
final class Crossings {
    private final Stack stack;
    private final Layout layout;
    private final int level;

    Crossings(Stack stack, Layout layout, int level) {
        this.stack = stack;
        this.layout = layout;
        this.level = level;
    }

    /** Each device of the level is asked with those that went in before it. */
    List<FitQuestion> questions() {
        List<FitQuestion> questions = new ArrayList<>();
        List<Placed> members = new ArrayList<>(level(level).beside());
        members.add(level(level).device());
        for (int i = 0; i < members.size(); i++) {
            addQuestions(questions, members.get(i), members.subList(0, i));
        }
        return questions;
    }

    private void addQuestions(List<FitQuestion> questions, Placed device, List<Placed> before) {
        layout.valves(level).forEach(valve -> questions.add(inValve(valve, device, before)));
        List<Integer> extensions = layout.extensions(level);
        int around = layout.base(level);
        if (extensions.isEmpty()) {
            questions.add(question(around, device, Optional.empty(), occupants(around, before, List.of())));
        }
        for (int i = 0; i < extensions.size(); i++) {
            int extension = extensions.get(i);
            questions.add(question(around, device, Optional.of(extension),
                    occupants(around, before, extensions.subList(i, extensions.size()))));
            around = extension;
        }
    }

    private Level level(int index) {
        return stack.levels().get(index);
    }

    /** The valve's distal end lies where the lumen behind it is entered; what is allowed for valves is not added. */
    private FitQuestion inValve(int valve, Placed device, List<Placed> before) {
        Placed gate = level(valve).device();
        Lumen bore = gate.holding().orElseThrow();
        Length end = layout.entry(layout.base(level));
        List<Occupant> occupants = new ArrayList<>();
        Length opening = end.minus(bore.distalAt());
        before.forEach(p -> occupants.add(occupant(p.device(), layout.tipOf(p, level), p.used(), opening)));
        for (int extension : layout.extensions(level)) {
            level(extension).beside().forEach(
                    p -> occupants.add(occupant(p.device(), layout.tipOf(p, extension), p.used(), opening)));
            occupants.add(occupant(rod(extension), collar(extension), false, opening));
        }
        return new FitQuestion(gate.device(), bore, device.device(), Direction.TIP_FIRST,
                Optional.of(layout.tipOf(device, level).minus(end)),
                new Conditions(occupants, Optional.empty(), List.of(), device.used()), withoutLimits(stack.rules()));
    }

    private static RuleSet withoutLimits(RuleSet rules) {
        return new RuleSet(rules.title(), rules.revision(), rules.spans(), rules.clearances(), rules.afterUse(),
                rules.wireAhead(), rules.sampling(), Limits.NONE);
    }

    private FitQuestion question(int around, Placed device, Optional<Integer> extension, List<Occupant> occupants) {
        Placed outer = level(around).device();
        Length tip = extension.map(e -> layout.tip(e).max(layout.tip(around))).orElse(layout.tip(around));
        return new FitQuestion(outer.device(), outer.holding().orElseThrow(), device.device(), Direction.TIP_FIRST,
                Optional.of(layout.tipOf(device, level).minus(tip)),
                new Conditions(occupants, extension.map(e -> through(e, around)), List.of(), device.used()),
                stack.rules());
    }

    private Through through(int extension, int around) {
        Placed tube = level(extension).device();
        return new Through(tube.device(), tube.holding().orElseThrow(),
                layout.tip(extension).minus(opening(around)));
    }

    /** Where the lumen of a level opens distally. */
    private Length opening(int around) {
        return layout.tip(around).minus(level(around).device().holding().orElseThrow().distalAt());
    }

    /**
     * What lies in a lumen while a device of the level passes: those before it; and proximal to the collars of
     * extensions what lies beside those, with the push rods of all but the first, which is asked as passed through.
     */
    private List<Occupant> occupants(int around, List<Placed> before, List<Integer> extensions) {
        Length opening = opening(around);
        List<Occupant> occupants = new ArrayList<>();
        before.forEach(p -> occupants.add(occupant(p.device(), layout.tipOf(p, level), p.used(), opening)));
        for (int extension : extensions) {
            level(extension).beside().forEach(p -> besideTube(p, extension, opening).ifPresent(occupants::add));
        }
        extensions.stream().skip(1)
                .forEach(e -> occupants.add(occupant(rod(e), collar(e), false, opening)));
        return occupants;
    }

    /** What lies beside an extension's tube is outside it, and beside what passes only proximal to the collar. */
    private Optional<Occupant> besideTube(Placed device, int extension, Length opening) {
        Length cut = layout.tipOf(device, extension).minus(collar(extension)).max(Length.ZERO);
        boolean leftOver = device.device().device().insertableLength().map(l -> l.compareTo(cut) > 0).orElse(true);
        return leftOver ? Optional.of(occupant(Proximal.of(device.device(), cut, true, stack.rules()),
                layout.tipOf(device, extension).minus(cut), device.used(), opening)) : Optional.empty();
    }

    private ReadDevice rod(int extension) {
        Placed tube = level(extension).device();
        return Proximal.of(tube.device(), tube.holding().orElseThrow().proximalAt(), false, stack.rules());
    }

    private Length collar(int extension) {
        return layout.entry(extension);
    }

    private static Occupant occupant(ReadDevice device, Length tip, boolean used, Length opening) {
        return new Occupant(device, tip.minus(opening), used);
    }
}
