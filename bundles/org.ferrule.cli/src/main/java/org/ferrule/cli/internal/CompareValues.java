/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.ferrule.profile.table.Value;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Values of the table of differences as JSON: each says what is known of it. */
final class CompareValues {
    private static final String KNOWN = "known";
    private static final int FACTOR_DECIMALS = 2;

    private CompareValues() {
    }

    static ObjectNode json(Value value) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (value instanceof Value.Outer outer) {
            node.put(KNOWN, true).set("diameterMm", Millimetres.of(outer.figure(), RoundingMode.CEILING));
            return node.put("assumed", outer.assumed()).put("atMm", outer.at().map(Millimetres::of).orElse(null));
        }
        if (value instanceof Value.Inner inner) {
            node.put(KNOWN, true).set("diameterMm", Millimetres.of(inner.figure(), RoundingMode.FLOOR));
            return node.put("assumed", inner.assumed());
        }
        if (value instanceof Value.Left left) {
            return node.put(KNOWN, true).put("worstMm", Millimetres.of(left.clearance().worst(), RoundingMode.FLOOR))
                    .put("nominalMm", Millimetres.of(left.clearance().nominal(), RoundingMode.FLOOR))
                    .put("bestMm", Millimetres.of(left.clearance().best(), RoundingMode.FLOOR));
        }
        if (value instanceof Value.Distance distance) {
            return node.put(KNOWN, true).put("lengthMm", Millimetres.of(distance.length()));
        }
        return value instanceof Value.Steps steps ? steps(node, steps)
                : node.put(KNOWN, false).put("none", value instanceof Value.None);
    }

    private static ObjectNode steps(ObjectNode node, Value.Steps steps) {
        ArrayNode jumps = node.put(KNOWN, steps.complete()).putArray("steps");
        steps.steps().forEach(step -> jumps.addObject().put("atMm", Millimetres.of(step.at()))
                .put("distal", step.distal()).put("proximal", step.proximal())
                .put("factor", BigDecimal.valueOf(step.factor()).setScale(FACTOR_DECIMALS, RoundingMode.HALF_EVEN)));
        return node;
    }
}
