/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.Objects;
import java.util.OptionalInt;

import org.ferrule.escalation.technique.StopRule;

/**
 * How a stop rule stands.
 *
 * @param rule the rule
 * @param reached whether what was used so far has reached its limit
 * @param rung number of the first rung in whose worst case it is reached; absent when none does, or a person watches
 */
public record StopStatus(StopRule rule, boolean reached, OptionalInt rung) {
    public StopStatus {
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(rung, "rung");
    }
}
