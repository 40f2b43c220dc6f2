/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.FitQuestion;

/**
 * How the two devices of a pair are called, and those that lie in the lumen with them.
 *
 * @param outerId id of the device around
 * @param outerName its name for people
 * @param innerId id of the device inside
 * @param innerName its name for people
 * @param others names for people by id
 */
public record PairNames(String outerId, String outerName, String innerId, String innerName,
        Map<String, String> others) {

    public PairNames {
        Objects.requireNonNull(outerId, "outerId");
        Objects.requireNonNull(outerName, "outerName");
        Objects.requireNonNull(innerId, "innerId");
        Objects.requireNonNull(innerName, "innerName");
        others = Map.copyOf(others);
    }

    /** The names of two devices with which nothing else lies in a lumen. */
    public PairNames(String outerId, String outerName, String innerId, String innerName) {
        this(outerId, outerName, innerId, innerName, Map.of());
    }

    /** The names of two devices. */
    public static PairNames of(Device outer, Device inner) {
        return new PairNames(outer.id(), outer.name(), inner.id(), inner.name());
    }

    /** The names of all devices of a question. */
    public static PairNames of(FitQuestion question) {
        return of(question.outer().device(), question.inner().device()).with(question.conditions());
    }

    /** The same with the names of the devices that lie in the lumen. */
    public PairNames with(Conditions conditions) {
        Map<String, String> names = new HashMap<>(others);
        conditions.inside().forEach(o -> names.put(o.device().device().id(), o.device().device().name()));
        conditions.through().map(t -> t.extension().device()).ifPresent(d -> names.put(d.id(), d.name()));
        return new PairNames(outerId, outerName, innerId, innerName, names);
    }

    /** The name of the device with that id; the id itself where there is no name. */
    String nameOf(String id) {
        String name = id.equals(innerId) ? innerName : id.equals(outerId) ? outerName : others.getOrDefault(id, id);
        return name.isEmpty() ? id : name;
    }
}
