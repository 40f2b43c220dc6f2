/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.plansheet.why.OrderReasons;
import org.ferrule.plansheet.words.PlanWords;

/**
 * All that a plan sheet shows.
 *
 * @param imprint title, audience, author, revision and date of the case
 * @param basis rule set, libraries, and as conditions what else the plan rests on, such as the shelf
 * @param plan the plan
 * @param words in which it is said
 * @param paper on which it is laid out
 * @param reasons what the order hangs on; absent where nobody asked
 * @param closed in a sentence, that the case is closed and when; nothing while it is open
 * @param limits limits and scores from stated figures, with their sources, one line each
 */
public record SheetContent(Imprint imprint, Basis basis, Plan plan, PlanWords words, PaperFormat paper,
        Optional<OrderReasons> reasons, Optional<String> closed, List<String> limits) {
    public SheetContent {
        Objects.requireNonNull(imprint, "imprint");
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(reasons, "reasons");
        Objects.requireNonNull(closed, "closed");
        limits = List.copyOf(limits);
    }

    /** The same, with what its order hangs on. */
    public SheetContent with(OrderReasons known) {
        return new SheetContent(imprint, basis, plan, words, paper, Optional.of(known), closed, limits);
    }
}
