/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.state.Aim;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Hazard;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.PlannedTry;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.order.Option;
import org.ferrule.order.OrderProblem;
import org.ferrule.order.OrderRules;
import org.ferrule.order.Setup;
import org.ferrule.order.Try;

/** Makes an ordering problem of what can be done. */
final class ProblemMaker {
    private final Ladder ladder;
    private final Aim aim;
    private final Costs used;
    private final Progress progress;
    private final Stock stock;

    ProblemMaker(Ladder ladder, Aim aim, Costs used, Progress progress) {
        this.ladder = ladder;
        this.aim = aim;
        this.used = used;
        this.progress = progress;
        this.stock = progress.stock();
    }

    /**
     * The problem.
     *
     * @param survey what can be done
     * @param excluded ids of what is left out for other reasons
     */
    OrderProblem of(Survey survey, Set<String> excluded) {
        Set<String> possible = survey.setups().stream().map(s -> s.id()).filter(id -> !excluded.contains(id))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        // Set-ups that can no longer be done take those with them that need them.
        while (possible.removeIf(id -> !reachable(survey, id, possible))) {
            continue;
        }
        List<Setup> setups = survey.setups().stream().filter(s -> possible.contains(s.id()))
                .map(s -> setup(s, survey.setupAnswers().get(s.id()))).toList();
        return new OrderProblem(setups, options(survey, excluded, possible), aim.stoppingCost(), rules());
    }

    private boolean reachable(Survey survey, String id, Set<String> possible) {
        return survey.setups().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow().setups().stream()
                .allMatch(other -> possible.contains(other) || progress.setups().contains(other));
    }

    private List<Option> options(Survey survey, Set<String> excluded, Set<String> setups) {
        List<Availability> able = new ArrayList<>(survey.techniques().stream()
                .filter(a -> a.somewhere() && !excluded.contains(a.technique().id()))
                .filter(a -> setups.containsAll(missing(a))).toList());
        Set<String> ids = new HashSet<>();
        do {
            ids.clear();
            able.forEach(a -> ids.add(a.technique().id()));
        } while (able.removeIf(a -> !ids.containsAll(untried(a.technique()))));
        return able.stream().map(this::option).toList();
    }

    /** Set-ups that it needs and that are not in place. */
    private Set<String> missing(Availability availability) {
        Set<String> missing = new LinkedHashSet<>(availability.technique().setups());
        missing.addAll(availability.with());
        missing.removeAll(progress.setups());
        return missing;
    }

    /** Techniques that must come before it and were never tried. */
    Set<String> untried(Technique technique) {
        return technique.after().stream().filter(id -> progress.triesOf(id) == 0).collect(Collectors.toSet());
    }

    private Option option(Availability availability) {
        Technique technique = availability.technique();
        int made = progress.triesOf(technique.id());
        List<Try> tries = new ArrayList<>();
        double chance = 1;
        for (int k = made; k < technique.tries().size(); k++) {
            PlannedTry planned = technique.tries().get(k);
            // Chances must not rise: more failures never make the next try better.
            chance = Math.min(chance, planned.chance().mean());
            tries.add(new Try(cost(planned.costs(), k == made ? availability.sample() : null), chance));
        }
        return new Option(technique.id(), tries, missing(availability), untried(technique), tier(technique),
                technique.axis().word(), made == 0 && isRisk(technique)).without(availability.without());
    }

    private Setup setup(org.ferrule.escalation.technique.Setup setup, MoveAnswer answer) {
        Set<String> needs = new LinkedHashSet<>(setup.setups());
        needs.removeAll(progress.setups());
        return new Setup(setup.id(), cost(setup.costs(), answer), needs, tier(setup), isRisk(setup));
    }

    private double cost(Costs costs, MoveAnswer answer) {
        double units = answer == null || aim.objective() != Resource.MONEY ? 0
                : Pricing.price(Pricing.taken(answer), stock).money();
        return costs.of(aim.objective()) + units;
    }

    /** Hazard first; of equal hazard what is outside the label comes after what is not. */
    private static int tier(Move move) {
        return 2 * move.hazard().ordinal() + (move.advice().offLabel().isPresent() ? 1 : 0);
    }

    /** A technique brings in a risk of its own where its hazard is higher than that of the set-ups it is done on. */
    private boolean isRisk(Technique technique) {
        Hazard ofSetups = technique.setups().stream().map(ladder::setup).map(Move::hazard)
                .max(Comparator.naturalOrder()).orElse(Hazard.USUAL);
        return technique.hazard().compareTo(ofSetups) > 0 || technique.advice().offLabel().isPresent();
    }

    private static boolean isRisk(org.ferrule.escalation.technique.Setup setup) {
        return setup.hazard() != Hazard.USUAL || setup.advice().offLabel().isPresent();
    }

    private OrderRules rules() {
        Double budget = aim.budgetsLimit() ? aim.budgets().get(aim.objective()) : null;
        OptionalDouble left = budget == null ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, budget - used.of(aim.objective())));
        return new OrderRules(aim.tiersFirst(), aim.oneNewRiskAStep(), aim.sameAxisDiscount(), left);
    }
}
