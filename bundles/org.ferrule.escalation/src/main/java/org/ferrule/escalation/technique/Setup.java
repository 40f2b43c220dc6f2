/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Something brought into the system that stays, so that techniques become possible or better: a guide extension, a
 * second wire, a dedicated wire. It never gets a device across by itself.
 *
 * @param id unique in its ladder
 * @param name in words
 * @param hazard how much harm it can do
 * @param roles what is needed
 * @param needs what must hold
 * @param setups ids of the set-ups that must be in place before
 * @param placements what it leaves in the system
 * @param costs what it uses up
 * @param exchangesWire whether the main wire is exchanged, so that its length must allow it or something must hold it
 * @param advice what else must be known
 */
public record Setup(String id, String name, Hazard hazard, List<Role> roles, List<Need> needs, Set<String> setups,
        List<Placement> placements, Costs costs, boolean exchangesWire, Advice advice) implements Move {
    public Setup {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(hazard, "hazard");
        roles = List.copyOf(roles);
        needs = List.copyOf(needs);
        setups = Set.copyOf(setups);
        placements = List.copyOf(placements);
        Objects.requireNonNull(costs, "costs");
        Objects.requireNonNull(advice, "advice");
        for (Placement placement : placements) {
            if (roles.stream().noneMatch(role -> role.id().equals(placement.role()))) {
                throw new IllegalArgumentException("the set-up \"" + id + "\" leaves \"" + placement.role()
                        + "\" in place, but has no such role");
            }
        }
    }
}
