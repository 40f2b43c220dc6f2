/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.state.Aim;
import org.ferrule.escalation.technique.Chance;
import org.ferrule.escalation.technique.PlannedTry;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.order.OrderedPlan;

/** What an order rests on. */
public final class AssumptionWords {
    private final Phrases phrases;
    private final Amounts amounts;

    AssumptionWords(Phrases phrases, Amounts amounts) {
        this.phrases = phrases;
        this.amounts = amounts;
    }

    /** All that is in force, one sentence each. */
    public List<String> all(Plan plan) {
        Aim aim = plan.file().aim();
        List<String> lines = new ArrayList<>();
        lines.add(phrases.fill("assume.objective", phrases.get("resource." + aim.objective()),
                amounts.stated(aim.objective(), aim.stoppingCost())));
        lines.add(phrases.get("assume.independent"));
        lines.add(discount(aim));
        lines.add(phrases.get(aim.tiersFirst() ? "assume.tiers" : "assume.noTiers"));
        lines.add(phrases.get(aim.oneNewRiskAStep() ? "assume.oneRisk" : "assume.manyRisks"));
        lines.add(phrases.get(aim.budgetsLimit() ? "assume.budgetsLimit" : "assume.budgetsMark"));
        if (plan.rungs().stream().anyMatch(rung -> !rung.equipment().drawnBack().isEmpty())) {
            lines.add(phrases.get("assume.drawnBack"));
        }
        priors(plan).ifPresent(lines::add);
        exactness(plan).ifPresent(lines::add);
        return List.copyOf(lines);
    }

    private String discount(Aim aim) {
        return aim.sameAxisDiscount() == 1 ? phrases.get("assume.noDiscount")
                : phrases.fill("assume.discount", Amounts.share(aim.sameAxisDiscount()));
    }

    private Optional<String> priors(Plan plan) {
        List<Chance> chances = plan.rungs().stream().filter(rung -> !rung.isSetup())
                .map(rung -> ((Technique) rung.move()).tries().get(rung.attempt() - 1)).map(PlannedTry::chance)
                .toList();
        long uncounted = chances.stream().filter(chance -> !chance.isCounted()).count();
        Set<String> labels = new TreeSet<>();
        chances.forEach(chance -> labels.add(Printable.line(chance.prior().label())));
        return Stream.of(phrases.fill("assume.priors", Long.toString(uncounted), Integer.toString(chances.size()),
                String.join("; ", labels))).filter(words -> !chances.isEmpty()).findFirst();
    }

    private Optional<String> exactness(Plan plan) {
        OrderedPlan order = plan.order();
        if (order.placements().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(order.isExact() ? phrases.get("assume.exact") : phrases.fill("assume.gap",
                amounts.used(plan.file().aim().objective(), order.gap())));
    }
}
