/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.technique.Ladder;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.order.OrderProblem;

/** Says of all that is not in a plan why it is not. */
final class Leftovers {
    private final Ladder ladder;
    private final Progress progress;
    private final WireCheck wireCheck;
    private final Survey survey;
    private final ProblemMaker maker;
    private final RemedySearch remedies;

    Leftovers(Ladder ladder, Progress progress, WireCheck wireCheck, Survey survey, ProblemMaker maker,
            RemedySearch remedies) {
        this.ladder = ladder;
        this.progress = progress;
        this.wireCheck = wireCheck;
        this.survey = survey;
        this.maker = maker;
        this.remedies = remedies;
    }

    /** Where nothing is planned at all: the device is across, or the wire is known not to lie in the true lumen. */
    private Optional<LeftOut> whenOver(Move move) {
        if (progress.crossed()) {
            return Optional.of(plain(move, LeftOut.Why.NOT_NEEDED));
        }
        return wireCheck == WireCheck.DENIED ? Optional.of(new LeftOut(move, LeftOut.Why.IMPOSSIBLE,
                List.of(new Lack.FactMissing(WireCheck.FACT, true)), List.of())) : Optional.empty();
    }

    List<LeftOut> of(List<Rung> rungs, Map<String, MoveAnswer> excluded, OrderProblem problem) {
        Set<String> planned = rungs.stream().map(r -> r.move().id()).collect(Collectors.toSet());
        Set<String> asked = new HashSet<>();
        problem.options().forEach(o -> asked.add(o.id()));
        problem.setups().forEach(s -> asked.add(s.id()));
        List<LeftOut> leftOut = new ArrayList<>();
        ladder.techniques().stream().filter(t -> !t.tries().isEmpty() && !planned.contains(t.id()))
                .forEach(t -> leftOut.add(whenOver(t).orElseGet(() -> technique(t, excluded, asked, problem))));
        ladder.setups().stream().filter(s -> !planned.contains(s.id()) && !progress.setups().contains(s.id()))
                .forEach(s -> leftOut.add(whenOver(s).orElseGet(() -> setup(s, excluded, asked))));
        return leftOut;
    }

    private LeftOut technique(Technique technique, Map<String, MoveAnswer> excluded, Set<String> asked,
            OrderProblem problem) {
        if (progress.triesOf(technique.id()) >= technique.tries().size()) {
            return plain(technique, LeftOut.Why.EXHAUSTED);
        }
        if (excluded.containsKey(technique.id())) {
            return impossible(technique, excluded.get(technique.id()), List.of());
        }
        if (asked.contains(technique.id())) {
            return plain(technique, worth(technique, problem));
        }
        Availability availability = survey.techniques().stream().filter(a -> a.technique() == technique).findFirst()
                .orElseThrow();
        List<Lack> setups = technique.setups().stream()
                .filter(id -> !progress.setups().contains(id) && !asked.contains(id))
                .<Lack>map(Lack.SetupImpossible::new).toList();
        boolean isAble = availability.somewhere() && setups.isEmpty();
        return isAble && !asked.containsAll(maker.untried(technique)) ? plain(technique, LeftOut.Why.NOT_AFTER)
                : impossible(technique, availability.sample(), setups);
    }

    /** By itself it is worth it where its set-ups and its first try together cost less per chance than stopping does. */
    private static LeftOut.Why worth(Technique technique, OrderProblem problem) {
        boolean isWorthIt = problem.options().stream().filter(o -> o.id().equals(technique.id()))
                .anyMatch(o -> (costOfSetups(o.setups(), problem) + o.tries().get(0).cost())
                        / o.tries().get(0).chance() < problem.stoppingCost());
        return isWorthIt ? LeftOut.Why.NO_PLACE : LeftOut.Why.NOT_WORTH_IT;
    }

    private static double costOfSetups(Set<String> ids, OrderProblem problem) {
        Set<String> all = new HashSet<>(ids);
        while (problem.setups().stream().anyMatch(s -> all.contains(s.id()) && all.addAll(s.setups()))) {
            continue;
        }
        return problem.setups().stream().filter(s -> all.contains(s.id())).mapToDouble(s -> s.cost()).sum();
    }

    private LeftOut setup(Setup setup, Map<String, MoveAnswer> excluded, Set<String> asked) {
        if (progress.failedSetups().contains(setup.id())) {
            return plain(setup, LeftOut.Why.FAILED);
        }
        MoveAnswer answer = excluded.getOrDefault(setup.id(), survey.setupAnswers().get(setup.id()));
        if (asked.contains(setup.id()) || answer == null) {
            return plain(setup, LeftOut.Why.NOT_NEEDED);
        }
        return answer.isPossible() ? plain(setup, LeftOut.Why.NOT_NEEDED) : impossible(setup, answer, List.of());
    }

    private static LeftOut plain(Move move, LeftOut.Why why) {
        return new LeftOut(move, why, List.of(), List.of());
    }

    private LeftOut impossible(Move move, MoveAnswer answer, List<Lack> more) {
        List<Lack> lacks = new ArrayList<>(more);
        // What it lacks in a system without its set-ups says nothing.
        if (more.isEmpty()) {
            lacks.addAll(answer.lacks());
        }
        return new LeftOut(move, LeftOut.Why.IMPOSSIBLE, lacks, remedies.of(answer.before(), lacks));
    }
}
