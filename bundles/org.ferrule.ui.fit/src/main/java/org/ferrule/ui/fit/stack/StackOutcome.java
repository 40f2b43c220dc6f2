/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.ui.fit.passage.ProjectDevices;

/**
 * What came of a stack.
 *
 * @param answer absent when something stands in the way
 * @param problem what stands in the way; empty when nothing does
 */
record StackOutcome(Optional<AnsweredStack> answer, String problem) {

    StackOutcome {
        Objects.requireNonNull(answer, "answer");
        Objects.requireNonNull(problem, "problem");
    }

    static StackOutcome of(ProjectDevices project, StackRequest asked) {
        try {
            return new StackOutcome(Optional.of(new StackAnswerer(project, asked).answer()), "");
        } catch (ReferenceException | RuleSetException | IllegalArgumentException e) {
            return new StackOutcome(Optional.empty(), e.getMessage());
        }
    }
}
