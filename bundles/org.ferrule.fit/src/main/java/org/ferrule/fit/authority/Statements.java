/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.authority;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;

/** The statements of one authority about a pair. A "no" among them outweighs every "yes". */
record Statements(List<Statement> all) {
    /** Nobody says anything. */
    static final Statements NONE = new Statements(List.of());

    Statements {
        all = List.copyOf(all);
    }

    boolean isSilent() {
        return all.isEmpty();
    }

    Optional<Statement> no() {
        return all.stream().filter(s -> !s.yes()).findFirst();
    }

    Optional<Statement> yes() {
        return all.stream().filter(Statement::yes).findFirst();
    }

    /** Whether it says yes and nothing else. */
    boolean agreesOnYes() {
        return !isSilent() && no().isEmpty();
    }

    /** The reasons of all statements, and the disagreement among them when there is one. */
    List<Reason> reasons(ReasonCode disagreement) {
        List<Reason> reasons = new ArrayList<>(all.stream().map(Statement::reason).toList());
        if (no().isPresent() && yes().isPresent()) {
            reasons.add(Reason.of(disagreement, Reason.source(yes().get().source()),
                    Reason.source(no().get().source())));
        }
        return reasons;
    }
}
