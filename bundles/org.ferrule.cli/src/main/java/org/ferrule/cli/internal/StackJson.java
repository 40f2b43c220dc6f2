/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;

import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.stack.AccessRatio;
import org.ferrule.fit.stack.LevelAnswer;
import org.ferrule.fit.stack.Placed;
import org.ferrule.fit.stack.StackAnswer;
import org.ferrule.fit.stack.Tip;
import org.ferrule.fit.verdict.Verdict;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A stack's answer as JSON. */
public final class StackJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private final AnswerJson answers;

    public StackJson(ReasonWords words) {
        this.answers = new AnswerJson(words);
    }

    /** The whole answer, level by level. */
    public ObjectNode write(StackAnswer answer) {
        ObjectNode node = NODES.objectNode();
        node.put("verdict", verdict(answer, Phase.IN)).put("outVerdict", verdict(answer, Phase.OUT));
        ArrayNode levels = node.putArray("levels");
        answer.levels().forEach(l -> levels.add(level(l)));
        node.set("access", answer.access().map(StackJson::access).orElse(null));
        node.set("chance", answer.chance().map(c -> NODES.objectNode().put("low", Millimetres.of(c.low(), FLOOR))
                .put("high", Millimetres.of(c.high(), CEILING))).orElse(null));
        ArrayNode tips = node.putArray("tips");
        answer.tips().forEach(t -> tips.add(tip(t)));
        Device outermost = answer.levels().get(0).level().device().device().device();
        ArrayNode reasons = node.putArray("reasons");
        answer.reasons().forEach(r -> reasons.add(answers.reason(r, PairNames.of(outermost, outermost))));
        return node;
    }

    /** The verdict of the level that decides; nothing where nothing is asked. */
    private static String verdict(StackAnswer answer, Phase phase) {
        return answer.weakest(phase).flatMap(l -> l.verdict(phase)).map(Verdict::word).orElse(null);
    }

    private ObjectNode level(LevelAnswer level) {
        ObjectNode node = NODES.objectNode().put("device", id(level.level().device()));
        ArrayNode beside = node.putArray("beside");
        level.level().beside().forEach(p -> beside.add(id(p)));
        ArrayNode crossings = node.putArray("crossings");
        level.crossings().forEach(c -> crossings.add(answers.write(c.question(), c.answer())));
        return node;
    }

    private static String id(Placed placed) {
        return placed.device().device().id();
    }

    private static ObjectNode access(AccessRatio ratio) {
        return NODES.objectNode().put("vessel", ratio.vessel())
                .put("smallestVesselMm", Millimetres.of(ratio.smallestVessel(), FLOOR))
                .put("largestDeviceMm", Millimetres.of(ratio.largestDevice(), CEILING))
                .put("low", Millimetres.of(ratio.low(), FLOOR)).put("high", Millimetres.of(ratio.high(), CEILING));
    }

    private static ObjectNode tip(Tip tip) {
        return NODES.objectNode().put("device", tip.device()).put("fromHubMm", Millimetres.of(tip.fromHub(), FLOOR))
                .put("outsideMm", tip.outside().map(o -> Millimetres.of(o, FLOOR)).orElse(null));
    }
}
