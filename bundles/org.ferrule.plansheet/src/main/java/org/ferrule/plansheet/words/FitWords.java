/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.escalation.equipment.Crossing;
import org.ferrule.escalation.equipment.Filling;
import org.ferrule.escalation.equipment.Suitability;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/** Verdicts of a plan, with the words, the clearances and the looks that charts have for them. */
public final class FitWords {
    private static final Set<ReasonCode> FAVOURABLE = Set.of(ReasonCode.ENOUGH_CLEARANCE, ReasonCode.CLAIM_SAYS_YES,
            ReasonCode.CLAIM_NAMES_PARTNER, ReasonCode.BENCH_PASSED, ReasonCode.RIGID_PASSES_BEND);
    private static final int MOST = 2;

    private final Phrases phrases;
    private final ReasonWords reasons;
    private final AnswerWords answers;

    FitWords(Phrases phrases, ReasonWords reasons) {
        this.phrases = phrases;
        this.reasons = reasons;
        this.answers = new AnswerWords(reasons);
    }

    /** How the verdict on a device looks in charts. */
    public VerdictLook look(Suitability suitability) {
        Authority authority = suitability.deciding().filter(c -> c.verdict() == suitability.verdict())
                .map(c -> c.deciding().authority()).orElse(Authority.GEOMETRY);
        return VerdictLook.of(suitability.verdict(), authority);
    }

    /** Verdict and the clearance that is sure, such as "fits, 0.12 mm left"; "stands by" of what passes nothing. */
    public String brief(Suitability suitability) {
        if (suitability.equals(Suitability.STANDS_BY)) {
            return phrases.get("fit.standsBy");
        }
        String word = look(suitability).word();
        boolean known = suitability.verdict() != Verdict.UNKNOWN;
        Optional<Length> left = suitability.worstClearance().filter(clearance -> known);
        return left.map(clearance -> clearance.isNegative()
                ? phrases.fill("fit.overlap", word, reasons.lengths().overlap(clearance))
                : phrases.fill("fit.left", word, reasons.lengths().clearance(clearance))).orElse(word);
    }

    /** Verdict and clearance in two or three words, such as "tight 0.02 mm"; an overlap has a minus sign. */
    public String shortest(Suitability suitability) {
        if (suitability.equals(Suitability.STANDS_BY)) {
            return phrases.get("fit.standsBy.shortest");
        }
        String word = look(suitability).word();
        boolean known = suitability.verdict() != Verdict.UNKNOWN;
        return suitability.worstClearance().filter(clearance -> known)
                .map(clearance -> phrases.fill("fit.shortest", word, reasons.lengths().clearance(clearance)))
                .orElse(word);
    }

    /** All that was asked of a device with the answers and their reasons, one line each. */
    public List<String> explain(Suitability suitability) {
        List<String> lines = new ArrayList<>();
        for (Crossing crossing : suitability.crossings()) {
            lines.add(phrases.fill("way", phrases.get("way." + crossing.way()),
                    answers.summary(crossing.deciding())));
            why(crossing).forEach(lines::add);
        }
        suitability.filling().map(this::filling).ifPresent(lines::add);
        return List.copyOf(lines);
    }

    /** Why a device cannot be planned with, in one line: what stops it, or what nobody states; two reasons at most. */
    public String against(Suitability suitability) {
        return against(suitability, MOST);
    }

    /** The same with so many reasons at most. */
    String against(Suitability suitability, int most) {
        Optional<Filling> filling = suitability.filling().filter(f -> f.verdict() == suitability.verdict());
        if (filling.isPresent()) {
            return filling(filling.get());
        }
        return suitability.deciding().map(crossing -> phrases.fill("fit.against",
                phrases.get("way." + crossing.way()), String.join("; ", decisive(crossing, most)))).orElse("");
    }

    /** What has to be watched where a device passes: cautions of all its ways, each once. */
    public List<String> cautions(Suitability suitability) {
        return suitability.crossings().stream().flatMap(crossing -> crossing.answer().in().reasons().stream()
                .filter(reason -> reason.code().weight() == ReasonCode.Weight.CAUTION)
                .map(reason -> reasons.say(reason, crossing.answer().in(), PairNames.of(crossing.question()))))
                .distinct().toList();
    }

    /** Whether a balloon fills the lumen that it lies in. */
    String filling(Filling filling) {
        return phrases.fill("filling." + filling.verdict(), length(filling.diameter()), length(filling.lumen()));
    }

    private String length(Optional<Length> length) {
        return length.map(reasons.lengths()::plain).orElseGet(() -> phrases.get("notStated"));
    }

    /** What stands against it; what speaks for it does not. */
    private List<String> decisive(Crossing crossing, int most) {
        PhaseAnswer answer = crossing.deciding();
        List<String> said = answer.reasons().stream().filter(r -> r.code().weight() == ReasonCode.Weight.DECIDES)
                .filter(r -> !FAVOURABLE.contains(r.code()))
                .map(r -> reasons.say(r, answer, PairNames.of(crossing.question()))).distinct().limit(most).toList();
        return said.isEmpty() ? List.of(answers.summary(answer)) : said;
    }

    private List<String> why(Crossing crossing) {
        PhaseAnswer answer = crossing.deciding();
        return answer.reasons().stream().filter(r -> r.code().weight() == ReasonCode.Weight.DECIDES)
                .map(r -> reasons.say(r, answer, PairNames.of(crossing.question()))).distinct().toList();
    }
}
