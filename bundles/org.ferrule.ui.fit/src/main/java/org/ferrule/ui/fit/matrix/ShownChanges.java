/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.engine.signoff.VerdictChange;
import org.ferrule.fit.device.Phase;

/** The verdicts that are not what they were, by cell. Immutable. */
public final class ShownChanges {

    private record Cell(String outer, String inner) {
    }

    private final Map<Cell, String> before = new HashMap<>();
    private final Set<String> lines = new HashSet<>();

    /** Shows these changes. */
    public ShownChanges(List<VerdictChange> changes) {
        for (VerdictChange change : changes) {
            String was = (change.phase() == Phase.IN ? "was " : "out: was ") + change.before().word();
            before.putIfAbsent(new Cell(change.outerKey(), change.innerKey()), was);
            lines.add(change.outerKey());
            lines.add(change.innerKey());
        }
    }

    /** Tells whether a line has a cell that has changed. */
    boolean concerns(String key) {
        return lines.contains(key);
    }

    /** Says what a cell was; nothing where it is as it was. */
    public Optional<String> before(String outerKey, String innerKey) {
        return Optional.ofNullable(before.get(new Cell(outerKey, innerKey)));
    }

    /** Returns how many cells have changed. */
    public int count() {
        return before.size();
    }
}
