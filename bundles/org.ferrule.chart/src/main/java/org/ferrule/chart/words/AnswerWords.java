/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Reason.SourceArgument;
import org.ferrule.quantity.Length;

/** Says whole answers in words. Immutable. */
public final class AnswerWords {
    private final ReasonWords reasons;
    private final Phrases phrases;
    private final LengthWords lengths;

    /** Words that say reasons the same way. */
    public AnswerWords(ReasonWords reasons) {
        this.reasons = reasons;
        this.phrases = reasons.phrases();
        this.lengths = reasons.lengths();
    }

    /**
     * One sentence: verdict, on what it rests, clearances and the place that decides; such as "Tight by geometry:
     * clearance 0.01 mm / 0.3 thou worst, ..., at the balloon in the working lumen".
     */
    public String summary(PhaseAnswer answer) {
        String verdict = phrases.fill("summary", phrases.get("verdict." + answer.verdict()),
                phrases.get("authority." + answer.authority()));
        String clearance = answer.clearance().map(this::clearances).orElse(phrases.get("summary.noClearance"));
        String place = answer.limiting().map(limiting -> ", " + place(limiting)).orElse("");
        return capitalised(verdict) + ": " + clearance + place;
    }

    /** The place that decides, such as "at the balloon in the working lumen". */
    public String place(Limiting limiting) {
        return phrases.fill("summary.limiting", reasons.section(limiting.deviceSection()),
                reasons.bore(limiting.lumenSection()));
    }

    private String clearances(Clearance clearance) {
        return phrases.fill("summary.clearance", inBoth(clearance.worst()), inBoth(clearance.nominal()),
                inBoth(clearance.best()));
    }

    private String inBoth(Length clearance) {
        return phrases.fill("clearance.both", lengths.clearanceMm(clearance), lengths.thousandths(clearance));
    }

    /** The long answer, line by line: going in, then coming out. */
    public List<AnswerLine> explain(FitAnswer answer, PairNames pair, Direction direction) {
        List<AnswerLine> lines = new ArrayList<>(explain(answer.in(), Phase.IN, pair, direction));
        if (answer.out().equals(answer.in())) {
            lines.add(new AnswerLine(Phase.OUT, AnswerLine.Kind.SUMMARY, phrases.get("explain.sameOut")));
        } else {
            lines.addAll(explain(answer.out(), Phase.OUT, pair, direction));
        }
        return List.copyOf(lines);
    }

    /** The long answer for one phase: summary, decisive reasons, conflicts, cautions, notes and sources. */
    public List<AnswerLine> explain(PhaseAnswer answer, Phase phase, PairNames pair, Direction direction) {
        List<AnswerLine> lines = new ArrayList<>();
        lines.add(new AnswerLine(phase, AnswerLine.Kind.SUMMARY, summary(answer)));
        answer.reasons().stream().distinct().forEach(reason -> lines.add(new AnswerLine(phase,
                AnswerLine.Kind.valueOf(reason.code().weight().name()), reasons.say(reason, answer, pair))));
        if (answer.authority() != Authority.GEOMETRY) {
            lines.add(new AnswerLine(phase, AnswerLine.Kind.NOTE,
                    phrases.fill("explain.geometry", answer.geometry().word())));
        }
        if (phase == Phase.IN) {
            answer.reach().ifPresent(
                    reach -> lines.add(new AnswerLine(phase, AnswerLine.Kind.NOTE, reach(reach, direction))));
        }
        sources(answer).forEach(source -> lines.add(new AnswerLine(phase, AnswerLine.Kind.SOURCE,
                phrases.fill("explain.source", source.toString()))));
        return List.copyOf(lines);
    }

    private String reach(Length reach, Direction direction) {
        if (direction == Direction.OVER_WIRE_TAIL) {
            return phrases.fill("explain.reach.wire", lengths.length(reach));
        }
        return phrases.fill(reach.isNegative() ? "explain.reach.inside" : "explain.reach", lengths.length(reach));
    }

    /** The sources that an answer rests on, each once: of the figures at the limiting place and of its reasons. */
    public static Set<SourceRef> sources(PhaseAnswer answer) {
        Stream<SourceRef> ofFigures = answer.limiting().stream()
                .flatMap(limiting -> Stream.of(limiting.lumenSource(), limiting.deviceSource()));
        Stream<SourceRef> ofReasons = answer.reasons().stream().flatMap(reason -> reason.arguments().stream())
                .filter(SourceArgument.class::isInstance).map(argument -> ((SourceArgument) argument).value());
        Set<SourceRef> sources = new LinkedHashSet<>();
        Stream.concat(ofFigures, ofReasons).filter(source -> !source.isNone()).forEach(sources::add);
        return sources;
    }

    private static String capitalised(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
