/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.Set;

import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Reason;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** An answer as JSON: lengths in millimetres, clearances rounded downward at a nanometre. */
public final class AnswerJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private final ReasonWords words;

    public AnswerJson(ReasonWords words) {
        this.words = words;
    }

    /** The whole answer: going in, and under {@code out} coming out. */
    public ObjectNode write(FitQuestion question, FitAnswer answer) {
        PairNames pair = PairNames.of(question);
        ObjectNode node = NODES.objectNode();
        node.put("outer", question.outer().device().id());
        node.put("lumen", question.lumen().name());
        node.put("inner", question.inner().device().id());
        node.put("direction", question.direction().word());
        node.set("conditions", ConditionsJson.of(question.conditions()));
        node.put("rules", question.rules().title());
        addPhase(node, answer.in(), pair);
        node.set("sources", sources(answer));
        ObjectNode out = NODES.objectNode();
        addPhase(out, answer.out(), pair);
        node.set("out", out);
        return node;
    }

    private void addPhase(ObjectNode node, PhaseAnswer answer, PairNames pair) {
        node.put("verdict", answer.verdict().word());
        node.put("authority", answer.authority().word());
        node.put("geometry", answer.geometry().word());
        node.set("clearanceMm", answer.clearance().map(AnswerJson::clearance).orElse(null));
        node.set("limiting", answer.limiting().map(AnswerJson::limiting).orElse(null));
        node.put("reachMm", answer.reach().map(r -> Millimetres.of(r, RoundingMode.FLOOR)).orElse(null));
        ArrayNode reasons = node.putArray("reasons");
        answer.reasons().forEach(r -> reasons.add(reason(r, pair)));
        ArrayNode evidence = node.putArray("evidence");
        answer.evidence().forEach(e -> evidence.add(EvidenceJson.of(e)));
    }

    private static ObjectNode clearance(Clearance clearance) {
        return NODES.objectNode().put("worst", Millimetres.of(clearance.worst(), RoundingMode.FLOOR))
                .put("nominal", Millimetres.of(clearance.nominal(), RoundingMode.FLOOR))
                .put("best", Millimetres.of(clearance.best(), RoundingMode.FLOOR));
    }

    private static ObjectNode limiting(Limiting limiting) {
        ObjectNode node = NODES.objectNode();
        node.put("lumenSection", limiting.lumenSection());
        node.put("lumenStationMm", Millimetres.of(limiting.lumenStation()));
        node.set("lumenDiameterMm", Millimetres.of(limiting.lumenDiameter(), RoundingMode.FLOOR));
        node.put("deviceSection", limiting.deviceSection());
        node.put("deviceStationMm", Millimetres.of(limiting.deviceStation()));
        node.set("deviceDiameterMm", Millimetres.of(limiting.deviceDiameter(), RoundingMode.CEILING));
        return node;
    }

    /** A reason with its code, its weight and its words. */
    ObjectNode reason(Reason reason, PairNames pair) {
        return NODES.objectNode().put("code", word(reason.code())).put("weight", word(reason.code().weight()))
                .put("text", words.say(reason, pair));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    private static ArrayNode sources(FitAnswer answer) {
        Set<SourceRef> sources = new LinkedHashSet<>(AnswerWords.sources(answer.in()));
        sources.addAll(AnswerWords.sources(answer.out()));
        ArrayNode node = NODES.arrayNode();
        sources.forEach(s -> node.add(s.toString()));
        return node;
    }
}
