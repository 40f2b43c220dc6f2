/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import java.util.Comparator;
import java.util.List;

/**
 * How ready a case is.
 *
 * @param plannedCase the case
 * @param needs answers to its needs, in their order
 */
public record CaseAnswer(PlannedCase plannedCase, List<NeedAnswer> needs) {

    /** Copies the list. */
    public CaseAnswer {
        needs = List.copyOf(needs);
    }

    /** Returns the worst of its needs; a case that needs nothing is ready. */
    public Readiness readiness() {
        return needs.stream().map(NeedAnswer::readiness).max(Comparator.naturalOrder()).orElse(Readiness.READY);
    }
}
