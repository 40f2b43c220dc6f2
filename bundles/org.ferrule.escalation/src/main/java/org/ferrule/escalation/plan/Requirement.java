/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Technique;

/**
 * What a technique needs in a case, whatever lies on the shelf.
 *
 * @param technique the technique
 * @param parts who could play each role, of the set-ups that it needs first
 */
public record Requirement(Technique technique, List<Part> parts) {

    /**
     * One role, and all that could play it.
     *
     * @param move id of the set-up or the technique
     * @param role the role
     * @param fitting ids of devices that would surely pass, best first; empty for equipment
     * @param tight ids of devices that would pass tightly, best first
     */
    public record Part(String move, Role role, List<String> fitting, List<String> tight) {
        public Part {
            Objects.requireNonNull(move, "move");
            Objects.requireNonNull(role, "role");
            fitting = List.copyOf(fitting);
            tight = List.copyOf(tight);
        }

        /** The word for the equipment, where no device is meant. */
        public Optional<String> equipment() {
            return role.selection().equipment();
        }
    }

    public Requirement {
        Objects.requireNonNull(technique, "technique");
        parts = List.copyOf(parts);
    }
}
