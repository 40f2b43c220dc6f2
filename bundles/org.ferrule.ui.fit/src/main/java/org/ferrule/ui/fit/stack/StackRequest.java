/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.ui.IMemento;

/**
 * A stack as it is filled in.
 *
 * @param entries from the outside to the inside
 * @param vessel diameter of the vessel around the outermost device, as typed; empty when nothing is known of it
 * @param rules the rule set, as a path in the project; empty for the only one
 */
public record StackRequest(List<StackEntry> entries, String vessel, String rules) {

    /** Nothing is filled in yet. */
    public static final StackRequest EMPTY = new StackRequest(List.of(), "", "");

    private static final String ENTRY = "entry";

    /** Checks that nothing is missing. */
    public StackRequest {
        entries = List.copyOf(entries);
        Objects.requireNonNull(vessel, "vessel");
        Objects.requireNonNull(rules, "rules");
    }

    /** The same with other devices. */
    StackRequest with(List<StackEntry> others) {
        return new StackRequest(others, vessel, rules);
    }

    /** The same with one more device inside all others. */
    public StackRequest withMore(StackEntry entry) {
        return with(Stream.concat(entries.stream(), Stream.of(entry)).toList());
    }

    /** The same with one device in another way. */
    StackRequest with(int index, StackEntry entry) {
        List<StackEntry> changed = new ArrayList<>(entries);
        changed.set(index, entry);
        return with(changed);
    }

    /** The same without one device. */
    StackRequest without(int index) {
        List<StackEntry> fewer = new ArrayList<>(entries);
        fewer.remove(index);
        return with(fewer);
    }

    /** The same with one device further out or further in. */
    StackRequest moved(int index, int to) {
        List<StackEntry> moved = new ArrayList<>(entries);
        moved.add(to, moved.remove(index));
        return with(moved);
    }

    void save(IMemento memento) {
        entries.forEach(entry -> entry.save(memento.createChild(ENTRY)));
        memento.putString("vessel", vessel);
        memento.putString("rules", rules);
    }

    static StackRequest restore(IMemento memento) {
        return new StackRequest(Stream.of(memento.getChildren(ENTRY)).map(StackEntry::restore).toList(),
                Optional.ofNullable(memento.getString("vessel")).orElse(""),
                Optional.ofNullable(memento.getString("rules")).orElse(""));
    }
}
