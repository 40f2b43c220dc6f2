/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.Objects;

import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.technique.Role;

/**
 * Something that must be at hand when the worst happens, asked about in the system in place.
 *
 * @param role what for
 * @param answer who can play it, and why nobody can
 */
public record BailOut(Role role, MoveAnswer.Single answer) {
    public BailOut {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(answer, "answer");
    }

    /** Whether it is on the shelf and fits the system in place. */
    public boolean isReady() {
        return answer.lacks().isEmpty();
    }
}
