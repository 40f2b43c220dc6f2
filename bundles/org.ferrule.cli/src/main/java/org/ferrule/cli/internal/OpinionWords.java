/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.Locale;
import java.util.stream.Collectors;

import org.ferrule.fit.engineering.opinion.SecondOpinion;
import org.ferrule.fit.engineering.opinion.SecondOpinion.Contradiction;
import org.ferrule.statistics.BinomialInterval;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Second opinions in words and as JSON. */
public final class OpinionWords {
    private static final double CONFIDENCE = 0.95;

    private OpinionWords() {
    }

    /** One line. */
    public static String line(OpinionRun.Line line) {
        String head = pair(line) + ", " + way(line) + ": ";
        if (line.opinion() == null) {
            return head + "not compared, " + line.why();
        }
        SecondOpinion opinion = line.opinion();
        BinomialInterval share = opinion.share(CONFIDENCE);
        return head + opinion.verdict().word() + "; " + opinion.overlapping() + " of " + opinion.samples()
                + " parts overlap" + undecided(opinion) + " (" + percent(share.low()) + " to " + percent(share.high())
                + ", 95 % confidence)"
                + (opinion.agrees() ? "; agrees with the lanes" : "; CONTRADICTS THE LANES");
    }

    private static String undecided(SecondOpinion opinion) {
        return opinion.undecided() == 0 ? "" : ", " + opinion.undecided() + " may";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.2f %%", 100 * share);
    }

    private static String pair(OpinionRun.Line line) {
        return line.question().inner().device().id() + " in " + line.question().outer().device().id();
    }

    private static String way(OpinionRun.Line line) {
        return line.phase().name().toLowerCase(Locale.ROOT);
    }

    /** What contradicts, with all that is needed to repeat it. */
    public static String alarm(OpinionRun.Line line, Contradiction contradiction) {
        String sample = contradiction.sample() < 0 ? "all figures at their ends or centres"
                : "part " + contradiction.sample();
        return "DISAGREEMENT: " + pair(line) + ", " + way(line) + ": "
                + contradiction.difference().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ": gap "
                + contradiction.gapMm() + " mm; seed " + line.opinion().seed() + ", " + sample + ": "
                + contradiction.drawn().stream().map(d -> d.where() + " " + d.value())
                        .collect(Collectors.joining(", "));
    }

    /** As JSON. */
    public static ObjectNode json(OpinionRun.Line line) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("outer", line.question().outer().device().id()).put("lumen", line.question().lumen().name())
                .put("inner", line.question().inner().device().id()).put("phase", way(line));
        if (line.opinion() == null) {
            return node.put("notCompared", line.why());
        }
        SecondOpinion opinion = line.opinion();
        BinomialInterval share = opinion.share(CONFIDENCE);
        node.put("verdict", opinion.verdict().word()).put("seed", opinion.seed()).put("samples", opinion.samples())
                .put("overlapping", opinion.overlapping()).put("undecided", opinion.undecided())
                .put("shareLow", share.low()).put("shareHigh", share.high()).put("leastGapMm", opinion.leastMm())
                .put("agrees", opinion.agrees());
        ArrayNode contradictions = node.putArray("contradictions");
        opinion.contradictions().forEach(c -> contradictions.add(json(c)));
        return node;
    }

    private static ObjectNode json(Contradiction contradiction) {
        ObjectNode node = JsonNodeFactory.instance.objectNode()
                .put("difference", contradiction.difference().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .put("gapMm", contradiction.gapMm()).put("sample", contradiction.sample());
        ArrayNode drawn = node.putArray("drawn");
        contradiction.drawn().forEach(d -> drawn.addObject().put("where", d.where()).put("value", d.value()));
        return node;
    }
}
