/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.OptionalDouble;

import org.ferrule.order.InputRange;
import org.ferrule.order.Step;
import org.ferrule.plansheet.why.GivenUp;
import org.ferrule.plansheet.why.OrderReasons;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What the order of a plan hangs on, as JSON. */
final class ReasonsJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private ReasonsJson() {
    }

    /** How far figures may move, and what the conventional order gives up. */
    static ObjectNode write(OrderReasons reasons) {
        ObjectNode node = NODES.objectNode();
        ArrayNode inputs = node.putArray("inputs");
        reasons.ranges().forEach(range -> inputs.add(input(range)));
        node.set("conventional", reasons.conventional().map(ReasonsJson::conventional).orElse(null));
        return node;
    }

    private static ObjectNode input(InputRange range) {
        ObjectNode node = NODES.objectNode().put("figure", Names.word(range.input().kind().name()))
                .put("move", range.input().id().isEmpty() ? null : range.input().id())
                .put("attempt", range.input().attempt() == 0 ? null : Integer.valueOf(range.input().attempt()))
                .put("value", EquipmentJson.exact(range.value()));
        put(node, "low", range.low());
        put(node, "high", range.high());
        return node.put("exact", range.exact());
    }

    private static void put(ObjectNode node, String key, OptionalDouble end) {
        node.put(key, end.isPresent() ? EquipmentJson.exact(end.getAsDouble()) : null);
    }

    private static ObjectNode conventional(GivenUp givenUp) {
        ObjectNode node = NODES.objectNode();
        ArrayNode steps = node.putArray("steps");
        givenUp.steps().forEach(step -> steps.add(step(step)));
        node.put("same", givenUp.same()).put("loss", EquipmentJson.exact(givenUp.loss()));
        node.set("planned", EquipmentJson.costs(givenUp.planned()));
        node.set("conventional", EquipmentJson.costs(givenUp.conventional()));
        return node;
    }

    private static ObjectNode step(Step step) {
        return NODES.objectNode().put("move", step.id()).put("attempt",
                step.isSetup() ? null : Integer.valueOf(step.attempt()));
    }
}
