/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.DetailValue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The answer of a calculator as one JSON object; numbers are decimal and already rounded to the careful side. */
final class CalculationJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private CalculationJson() {
    }

    static String write(Calculation answer) {
        ObjectNode node = NODES.objectNode();
        node.put("value", answer.value().orElse(null));
        node.put("unit", answer.unit());
        answer.interval().ifPresent(interval -> node.put("low", interval.low()).put("high", interval.high()));
        node.put("method", answer.basis().method());
        node.put("validity", answer.basis().validity());
        node.put("source", answer.basis().source());
        answer.refusal().ifPresent(refusal -> node.putObject("refusal").put("code", refusal.code())
                .put("text", refusal.text()));
        answer.details().forEach(detail -> add(node, detail));
        return text(node);
    }

    private static String text(JsonNode node) {
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values cannot be written", e);
        }
    }

    private static void add(ObjectNode node, Detail detail) {
        node.set(detail.name(), value(detail.value()));
    }

    private static JsonNode value(DetailValue value) {
        if (value instanceof DetailValue.Number number) {
            return NODES.numberNode(number.value());
        } else if (value instanceof DetailValue.Text text) {
            return NODES.textNode(text.value());
        } else if (value instanceof DetailValue.Flag flag) {
            return NODES.booleanNode(flag.value());
        } else if (value instanceof DetailValue.Items items) {
            ArrayNode array = NODES.arrayNode();
            items.values().forEach(item -> array.add(value(item)));
            return array;
        }
        ObjectNode group = NODES.objectNode();
        ((DetailValue.Group) value).values().forEach(detail -> add(group, detail));
        return group;
    }
}
