/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.ladder;

import java.util.HashSet;
import java.util.Set;

import org.ferrule.escalation.plan.Rung;

/** Which parts of a ladder are unfolded. A step keeps its own over new plans, by what it does. */
final class Folds {

    /** Why the whole order is as it is. */
    static final String ORDER = "order";

    /** Limits and scores with their sources. */
    static final String LIMITS = "limits";

    private final Set<String> open = new HashSet<>();

    /** Returns the part of a step that tells why it stands where it stands. */
    static String of(Rung rung) {
        return "step " + rung.move().id() + " " + rung.attempt();
    }

    boolean isOpen(String part) {
        return open.contains(part);
    }

    /** Unfolds a part, or folds it again. */
    void toggle(String part) {
        if (!open.remove(part)) {
            open.add(part);
        }
    }
}
