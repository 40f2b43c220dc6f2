/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.csv;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.page.Head;
import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Lane;
import org.ferrule.fit.verdict.ReasonCode.Weight;
import org.ferrule.quantity.Length;

/**
 * A pair of a chart with its answer.
 *
 * @param outer the device around
 * @param inner the device inside
 * @param answer to the pair
 * @param words for its reasons
 */
record Pair(Head outer, Head inner, FitAnswer answer, ReasonWords words) {

    String verdict(Function<FitAnswer, PhaseAnswer> phase) {
        return VerdictLook.of(phase.apply(answer)).word();
    }

    Optional<Length> clearance(Lane lane) {
        return answer.in().clearance().map(three -> three.in(lane));
    }

    String limiting(Function<Limiting, String> section) {
        return answer.in().limiting().map(section).orElse("");
    }

    /** The reasons of both phases that have one of these weights, each once. */
    String reasons(Weight... weights) {
        Set<Weight> wanted = Set.of(weights);
        Set<String> said = new LinkedHashSet<>();
        add(said, answer.in(), wanted);
        add(said, answer.out(), wanted);
        return String.join("; ", said);
    }

    private void add(Set<String> said, PhaseAnswer phase, Set<Weight> weights) {
        PairNames names = new PairNames(outer.id(), outer.title(), inner.id(), inner.title());
        phase.reasons().stream().filter(reason -> weights.contains(reason.code().weight()))
                .forEach(reason -> said.add(words.say(reason, phase, names)));
    }

    String sources() {
        Set<SourceRef> sources = new LinkedHashSet<>(AnswerWords.sources(answer.in()));
        sources.addAll(AnswerWords.sources(answer.out()));
        return sources.stream().map(SourceRef::toString).collect(Collectors.joining("; "));
    }
}
