/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.rules.RuleSet;

/**
 * What is in place, outermost first.
 *
 * @param access the vessel around the outermost level; absent when nothing is known of it
 * @param levels at least one; all but the innermost have a lumen
 * @param rules in force
 */
public record Stack(Optional<Access> access, List<Level> levels, RuleSet rules) {

    public Stack {
        Objects.requireNonNull(access, "access");
        Objects.requireNonNull(rules, "rules");
        levels = List.copyOf(levels);
        if (levels.isEmpty() || levels.get(0).isValve() || levels.get(0).isExtension()) {
            throw new IllegalArgumentException("a stack begins with a device that lies in the vessel, not with "
                    + (levels.isEmpty() ? "nothing" : "\"" + id(levels.get(0)) + "\""));
        }
        if (!levels.get(0).beside().isEmpty()) {
            throw new IllegalArgumentException("beside \"" + id(levels.get(0)) + "\" in the vessel "
                    + levels.get(0).beside().size() + " devices were named, and none can be asked about");
        }
        levels.subList(0, levels.size() - 1).stream().filter(level -> level.device().holding().isEmpty()).findFirst()
                .ifPresent(level -> {
                    throw new IllegalArgumentException(
                            "device \"" + id(level) + "\" has no lumen to hold the next level");
                });
    }

    private static String id(Level level) {
        return level.device().device().device().id();
    }
}
