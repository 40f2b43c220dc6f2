/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.technique.Resource;

/** What a plan uses up, and where that is more than may be used. */
public final class BudgetWords {
    private final Phrases phrases;
    private final Amounts amounts;

    BudgetWords(Phrases phrases, Amounts amounts) {
        this.phrases = phrases;
        this.amounts = amounts;
    }

    /** What the resource is called. */
    public String name(Resource resource) {
        return phrases.get("resource." + resource);
    }

    /** Used, expected, at worst, and the limit, such as "10 used, 32 expected, 74 if every step is taken, of 90 min". */
    public String sums(Budget budget) {
        List<String> parts = new ArrayList<>();
        if (budget.used() > 0) {
            parts.add(phrases.fill("budget.used", amounts.number(budget.used())));
        }
        parts.add(phrases.fill("budget.expected", amounts.number(budget.expected())));
        parts.add(phrases.fill("budget.worst", amounts.number(budget.worst())));
        parts.add(budget.limit().isPresent()
                ? phrases.fill("budget.limit", amounts.stated(budget.resource(), budget.limit().getAsDouble()))
                : phrases.fill("budget.noLimit", amounts.unit(budget.resource())));
        return String.join(", ", parts);
    }

    /** From which step on the limit does not hold at worst; that it holds; empty where there is no limit. */
    public String beyond(Budget budget) {
        if (budget.limit().isEmpty()) {
            return "";
        }
        if (budget.isUsedUp()) {
            return phrases.get("budget.usedUp");
        }
        return budget.beyond().isPresent()
                ? phrases.fill("budget.beyond", Integer.toString(budget.beyond().getAsInt()))
                : phrases.get("budget.within");
    }

    /** Amounts with their units. */
    public Amounts amounts() {
        return amounts;
    }
}
