/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Slot;

/**
 * Whether a move can be made in a system, and with what.
 *
 * @param move technique or set-up
 * @param before the system in which it is made
 * @param after the system that it leaves, if it can be made; else as before
 * @param drawnBack slots that are emptied while it is made, as it does not need what is there
 * @param roles who plays each role; those that are not needed are left out
 * @param lacks why it cannot be made; none when it can
 */
public record MoveAnswer(Move move, SystemState before, SystemState after, Set<Slot> drawnBack,
        List<RoleAnswer> roles, List<Lack> lacks) {

    /**
     * Who plays a role that no move asks for.
     *
     * @param answer absent when it could not even be asked
     * @param lacks why nobody can; none when somebody can
     */
    public record Single(Optional<RoleAnswer> answer, List<Lack> lacks) {
        public Single {
            Objects.requireNonNull(answer, "answer");
            lacks = List.copyOf(lacks);
        }
    }

    public MoveAnswer {
        Objects.requireNonNull(move, "move");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        drawnBack = Set.copyOf(drawnBack);
        roles = List.copyOf(roles);
        lacks = List.copyOf(lacks);
    }

    /** Whether it can be made. */
    public boolean isPossible() {
        return lacks.isEmpty();
    }

    /** The device that plays a role, if one does. */
    public Optional<String> device(String role) {
        return roles.stream().filter(r -> r.role().id().equals(role)).findFirst().flatMap(RoleAnswer::chosen)
                .flatMap(Candidate::device);
    }
}
