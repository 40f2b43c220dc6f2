/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.Locale;

import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.Through;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The conditions of a question as JSON. */
final class ConditionsJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private ConditionsJson() {
    }

    static ObjectNode of(Conditions conditions) {
        ObjectNode node = NODES.objectNode();
        ArrayNode inside = node.putArray("inside");
        conditions.inside().forEach(o -> inside.add(occupant(o)));
        node.set("through", conditions.through().map(ConditionsJson::through).orElse(null));
        ArrayNode bends = node.putArray("bends");
        conditions.bends().forEach(b -> bends.add(bend(b)));
        return node.put("afterInflation", conditions.afterInflation());
    }

    private static ObjectNode occupant(Occupant occupant) {
        return NODES.objectNode().put("device", occupant.device().device().id())
                .put("wireMm", occupant.device().wire().label().map(Millimetres::of).orElse(null))
                .put("tipAheadMm", Millimetres.of(occupant.tipAhead())).put("used", occupant.used());
    }

    private static ObjectNode through(Through through) {
        return NODES.objectNode().put("extension", through.extension().device().id())
                .put("lumen", through.lumen().name()).put("protrusionMm", Millimetres.of(through.protrusion()));
    }

    private static ObjectNode bend(Bend bend) {
        return NODES.objectNode().put("where", bend.where().name().toLowerCase(Locale.ROOT))
                .put("radiusMm", Millimetres.of(bend.radius())).put("angleDegrees", bend.angleDegrees().orElse(null))
                .put("vesselMm", bend.vessel().map(Millimetres::of).orElse(null));
    }
}
