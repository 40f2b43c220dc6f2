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
 * @param names of both, and of what lies in the lumen with them
 * @param words for its reasons
 */
record Pair(Head outer, Head inner, FitAnswer answer, PairNames names, ReasonWords words) {

    String verdict(Function<FitAnswer, PhaseAnswer> phase) {
        return VerdictLook.of(phase.apply(answer)).word();
    }

    Optional<Length> clearance(Lane lane) {
        return answer.in().clearance().map(three -> three.in(lane));
    }

    String limiting(Function<Limiting, String> section) {
        return answer.in().limiting().map(section).orElse("");
    }

    /** The reasons of one phase that have a weight, each once. */
    String reasons(Function<FitAnswer, PhaseAnswer> phase, Weight weight) {
        return String.join("; ", said(phase.apply(answer), weight));
    }

    /** The reasons of both phases that have a weight, each once. */
    String reasons(Weight weight) {
        Set<String> said = said(answer.in(), weight);
        said.addAll(said(answer.out(), weight));
        return String.join("; ", said);
    }

    private Set<String> said(PhaseAnswer phase, Weight weight) {
        return phase.reasons().stream().filter(reason -> reason.code().weight() == weight)
                .map(reason -> words.say(reason, phase, names)).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    String sources() {
        Set<SourceRef> sources = new LinkedHashSet<>(AnswerWords.sources(answer.in()));
        sources.addAll(AnswerWords.sources(answer.out()));
        return sources.stream().map(SourceRef::toString).collect(Collectors.joining("; "));
    }
}
