/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;

/**
 * One try of a technique.
 *
 * @param costs what it uses up, success or not
 * @param chance that it succeeds if all earlier ones failed
 */
public record PlannedTry(Costs costs, Chance chance) {
    public PlannedTry {
        Objects.requireNonNull(costs, "costs");
        Objects.requireNonNull(chance, "chance");
    }
}
