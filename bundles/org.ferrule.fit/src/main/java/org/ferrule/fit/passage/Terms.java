/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Length;

/**
 * What the questions of a matrix have in common: all but the devices.
 *
 * @param direction how devices enter
 * @param reach as in {@link FitQuestion#reach()}
 * @param conditions what else holds
 * @param rules in force
 */
public record Terms(Direction direction, Optional<Length> reach, Conditions conditions, RuleSet rules) {

    public Terms {
        Objects.requireNonNull(direction, "direction");
        Objects.requireNonNull(reach, "reach");
        Objects.requireNonNull(conditions, "conditions");
        Objects.requireNonNull(rules, "rules");
    }
}
