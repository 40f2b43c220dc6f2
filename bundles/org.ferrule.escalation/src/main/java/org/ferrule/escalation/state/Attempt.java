/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.state;

import java.util.List;
import java.util.Objects;

import org.ferrule.escalation.technique.Costs;

/**
 * What was done: a set-up or a try of a technique.
 *
 * @param move id of the technique or the set-up
 * @param outcome of a set-up: crossed means that it is in place
 * @param used what it used up
 * @param units what was taken from the shelf
 * @param remark in words, without anything that tells who the patient is; empty when nothing is said
 */
public record Attempt(String move, Outcome outcome, Costs used, List<UsedUnit> units, String remark) {

    /**
     * One unit taken from the shelf.
     *
     * @param role for which
     * @param item id of the item on the shelf
     * @param lot empty when nobody noted it
     */
    public record UsedUnit(String role, String item, String lot) {
        public UsedUnit {
            Objects.requireNonNull(role, "role");
            Objects.requireNonNull(item, "item");
            Objects.requireNonNull(lot, "lot");
        }
    }

    public Attempt {
        Objects.requireNonNull(move, "move");
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(used, "used");
        units = List.copyOf(units);
        Objects.requireNonNull(remark, "remark");
    }
}
