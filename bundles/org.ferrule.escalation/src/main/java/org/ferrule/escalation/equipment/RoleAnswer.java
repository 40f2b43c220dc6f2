/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.escalation.technique.Role;

/**
 * Who can play a role in a system.
 *
 * @param role the role
 * @param ranked all who match it and that the shelf or a library knows, best first
 * @param choice why the first was chosen; absent when none can be planned with
 */
public record RoleAnswer(Role role, List<Candidate> ranked, Optional<Choice> choice) {
    public RoleAnswer {
        Objects.requireNonNull(role, "role");
        ranked = List.copyOf(ranked);
        Objects.requireNonNull(choice, "choice");
    }

    /** The one that is planned with. */
    public Optional<Candidate> chosen() {
        return ranked.stream().limit(1).filter(Candidate::isReady).findFirst();
    }

    /** The same with another one chosen, for the sake of later roles. */
    RoleAnswer preferring(Candidate other) {
        List<Candidate> all = new ArrayList<>(ranked);
        all.remove(other);
        all.add(0, other);
        return new RoleAnswer(role, all, Optional.of(Choice.LATER_ROLES));
    }
}
