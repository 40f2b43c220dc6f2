/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.change;

import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.fit.rules.RuleSet;

/**
 * Puts a changed device into questions wherever the former one stands in them. What was read of it is kept, so that a
 * device is read once for a whole matrix. Not safe for use from several threads.
 */
public final class Replacement {
    private final UnaryOperator<ReadDevice> change;
    private final Map<ReadDevice, ReadDevice> read = new IdentityHashMap<>();

    /** A change that gives back the same object where it does not touch a device. */
    private Replacement(UnaryOperator<ReadDevice> change) {
        this.change = change;
    }

    /** Replaces a device by one with other papers, which runs over the same wire. */
    public static Replacement of(Device device, Device changed, RuleSet rules) {
        return new Replacement(former -> former.device().equals(device)
                ? ReadDevice.over(changed, rules, former.wire()) : former);
    }

    /** Lets a device run over another wire. */
    public static Replacement ofWire(Device device, OwnWire wire, RuleSet rules) {
        return new Replacement(former -> former.device().equals(device) ? ReadDevice.over(device, rules, wire)
                : former);
    }

    /** Lets these devices, and no others, run over another wire. */
    public static Replacement ofWire(Collection<ReadDevice> devices, OwnWire wire, RuleSet rules) {
        Set<ReadDevice> touched = Collections.newSetFromMap(new IdentityHashMap<>());
        touched.addAll(devices);
        return new Replacement(former -> touched.contains(former) ? ReadDevice.over(former.device(), rules, wire)
                : former);
    }

    /** The question with the change. */
    public FitQuestion in(FitQuestion question) {
        ReadDevice outer = of(question.outer());
        return new FitQuestion(outer, outer.device().lumen(question.lumen().name()), of(question.inner()),
                question.direction(), question.reach(), in(question.conditions()), question.rules());
    }

    private Conditions in(Conditions conditions) {
        List<Occupant> inside = conditions.inside().stream()
                .map(o -> new Occupant(of(o.device()), o.tipAhead(), o.used())).toList();
        return new Conditions(inside, conditions.through().map(this::in), conditions.bends(),
                conditions.afterInflation());
    }

    private Through in(Through through) {
        ReadDevice extension = of(through.extension());
        return new Through(extension, extension.device().lumen(through.lumen().name()), through.protrusion());
    }

    private ReadDevice of(ReadDevice former) {
        return read.computeIfAbsent(former, change);
    }

    /** Whether the change touches a question. */
    public boolean touches(FitQuestion question) {
        return touches(question.outer()) || touches(question.inner()) || touches(question.conditions());
    }

    /** Whether the change touches what lies in the lumen or is passed on the way. */
    public boolean touches(Conditions conditions) {
        return conditions.inside().stream().anyMatch(o -> touches(o.device()))
                || conditions.through().filter(t -> touches(t.extension())).isPresent();
    }

    /** Whether the change touches a device. */
    public boolean touches(ReadDevice other) {
        return of(other) != other;
    }
}
