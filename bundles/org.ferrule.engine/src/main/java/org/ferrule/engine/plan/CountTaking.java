/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.List;

import org.ferrule.escalation.log.Counted;
import org.ferrule.model.PlannedTry;
import org.ferrule.model.Technique;
import org.ferrule.model.TechniqueLibrary;

/** Takes what a case counts over into the laboratory's own statistics. */
public final class CountTaking {
    private CountTaking() {
    }

    /**
     * Adds tries to the counts of a technique library.
     *
     * @param library is changed
     * @param counted as {@link Counted#of} reads it from a log with the same library
     * @return how many tries were added
     */
    public static int take(TechniqueLibrary library, List<Counted> counted) {
        int taken = 0;
        for (Counted each : counted) {
            for (Technique technique : library.getTechniques()) {
                if (each.technique().equals(technique.getId()) && each.attempt() <= technique.getTries().size()) {
                    add(technique.getTries().get(each.attempt() - 1), each.success());
                    taken++;
                }
            }
        }
        return taken;
    }

    private static void add(PlannedTry attempt, boolean success) {
        if (success) {
            attempt.setSuccesses(attempt.getSuccesses() + 1);
        } else {
            attempt.setFailures(attempt.getFailures() + 1);
        }
    }
}
