/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A way to get a device across.
 *
 * @param id unique in its ladder
 * @param name in words
 * @param axis what it does about the lesion
 * @param hazard how much harm it can do
 * @param roles what is needed
 * @param needs what must hold
 * @param setups ids of the set-ups that must be in place
 * @param after ids of the techniques that must have been tried before
 * @param tries one for each time that it may be tried, in order; empty for one that only ends the ladder or looks
 * @param advice what else must be known
 */
public record Technique(String id, String name, Axis axis, Hazard hazard, List<Role> roles, List<Need> needs,
        Set<String> setups, Set<String> after, List<PlannedTry> tries, Advice advice) implements Move {
    public Technique {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(axis, "axis");
        Objects.requireNonNull(hazard, "hazard");
        roles = List.copyOf(roles);
        needs = List.copyOf(needs);
        setups = Set.copyOf(setups);
        after = Set.copyOf(after);
        tries = List.copyOf(tries);
        Objects.requireNonNull(advice, "advice");
    }
}
