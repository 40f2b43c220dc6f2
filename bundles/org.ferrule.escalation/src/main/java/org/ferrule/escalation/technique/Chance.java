/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;

/**
 * The chance that a try succeeds, given that all earlier ones failed: counts of the laboratory added to a labelled
 * prior. A published share of successes is never such a chance.
 *
 * @param successes of the laboratory, 0 or more
 * @param failures of the laboratory, 0 or more
 * @param prior what is assumed before any count
 */
public record Chance(int successes, int failures, Prior prior) {

    /**
     * Counts that are assumed.
     *
     * @param successes more than 0
     * @param failures more than 0
     * @param label who assumes them, and why; never empty
     */
    public record Prior(double successes, double failures, String label) {
        public Prior {
            Objects.requireNonNull(label, "label");
            if (!(successes > 0) || !(failures > 0) || Double.isInfinite(successes + failures)) {
                throw new IllegalArgumentException(
                        "a prior needs counts above 0, not " + successes + " to " + failures);
            }
            if (label.isBlank()) {
                throw new IllegalArgumentException(
                        "the prior of " + successes + " to " + failures + " does not say whose it is");
            }
        }
    }

    public Chance {
        Objects.requireNonNull(prior, "prior");
        if (successes < 0 || failures < 0) {
            throw new IllegalArgumentException("counts cannot be " + successes + " and " + failures);
        }
    }

    /** Its mean, between 0 and 1. */
    public double mean() {
        double all = prior.successes() + prior.failures() + successes + failures;
        return (prior.successes() + successes) / all;
    }

    /** Whether the laboratory has counted anything. */
    public boolean isCounted() {
        return successes + failures > 0;
    }

    /** With one more try counted. */
    public Chance counting(boolean success) {
        return new Chance(successes + (success ? 1 : 0), failures + (success ? 0 : 1), prior);
    }
}
