/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.ui.IMemento;
import org.ferrule.profile.Landmark;
import org.ferrule.profile.ProfileComparison;

/**
 * What is to be compared, as it is filled in. References are paths in the project with ids behind, so that they hold
 * wherever the project lies.
 *
 * @param devices references of the devices, in their order
 * @param landmark from which stations count
 * @param lumens references of the devices around
 * @param wire the diameter of a wire, as typed; empty for none
 * @param rules the rule set, as a path in the project; empty for the first there is
 */
public record CompareRequest(List<String> devices, Landmark landmark, List<String> lumens, String wire,
        String rules) {

    /** Nothing is filled in yet. */
    public static final CompareRequest EMPTY = new CompareRequest(List.of(), Landmark.TIP, List.of(), "", "");

    private static final String DEVICE = "device";
    private static final String LUMEN = "lumen";

    /** Copies the lists. */
    public CompareRequest {
        devices = List.copyOf(devices);
        lumens = List.copyOf(lumens);
    }

    /** The request about more devices; those beyond the most that can be compared are left out. */
    public CompareRequest withMore(List<String> more) {
        Set<String> all = new LinkedHashSet<>(devices);
        all.addAll(more);
        return new CompareRequest(all.stream().limit(ProfileComparison.MOST).toList(), landmark, lumens, wire, rules);
    }

    void save(IMemento memento) {
        devices.forEach(device -> memento.createChild(DEVICE, device));
        lumens.forEach(lumen -> memento.createChild(LUMEN, lumen));
        memento.putString("landmark", landmark.word());
        memento.putString("wire", wire);
        memento.putString("rules", rules);
    }

    static CompareRequest restore(IMemento memento) {
        return new CompareRequest(ids(memento, DEVICE), landmark(text(memento, "landmark")), ids(memento, LUMEN),
                text(memento, "wire"), text(memento, "rules"));
    }

    private static List<String> ids(IMemento memento, String type) {
        List<String> ids = new ArrayList<>();
        Stream.of(memento.getChildren(type)).map(IMemento::getID).forEach(ids::add);
        return ids;
    }

    /** A word of another version counts from the tip. */
    private static Landmark landmark(String word) {
        try {
            return Landmark.parse(word);
        } catch (IllegalArgumentException e) {
            return Landmark.TIP;
        }
    }

    private static String text(IMemento memento, String key) {
        return Optional.ofNullable(memento.getString(key)).orElse("");
    }
}
