/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Pick;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Equipment, lots, lacks and costs as JSON. */
final class EquipmentJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final PlanWords words;

    EquipmentJson(PlanWords words) {
        this.words = words;
    }

    ObjectNode role(RoleAnswer answer) {
        ObjectNode node = NODES.objectNode().put("role", answer.role().id()).put("name",
                words.names().role(answer.role())).put("count", answer.role().count());
        return candidate(node, answer.chosen()).put("choice", answer.choice().map(Enum::name).map(Names::word)
                .orElse(null)).put("why", words.equipment().why(answer));
    }

    /** Device, verdict, clearance and picks; what nobody plays has none. */
    ObjectNode candidate(ObjectNode node, Optional<Candidate> candidate) {
        node.put("device", candidate.flatMap(Candidate::device).orElse(null));
        node.put("verdict", candidate.map(c -> c.suitability().verdict().word()).orElse(null));
        node.put("clearanceMm", candidate.flatMap(c -> c.suitability().worstClearance())
                .map(clearance -> Millimetres.of(clearance, RoundingMode.FLOOR)).orElse(null));
        ArrayNode picks = node.putArray("picks");
        candidate.ifPresent(c -> c.supply().picks().forEach(pick -> picks.add(pick(pick))));
        return node;
    }

    static ObjectNode pick(Pick pick) {
        return lot(pick.lot(), NODES.objectNode().put("item", pick.item()).put("count", pick.count()));
    }

    static ObjectNode lot(Lot lot, ObjectNode node) {
        return node.put("lot", lot.lot()).put("serial", lot.serial().orElse(null))
                .put("expiry", lot.expiry().map(Object::toString).orElse(null)).put("location", lot.location());
    }

    ArrayNode lacks(Iterable<Lack> lacks) {
        ArrayNode node = NODES.arrayNode();
        lacks.forEach(lack -> node.addObject().put("kind", Names.kind(lack)).put("text", words.lacks().say(lack)));
        return node;
    }

    static ObjectNode costs(Costs costs) {
        return NODES.objectNode().put("minutes", exact(costs.minutes())).put("contrastMl", exact(costs.contrastMl()))
                .put("doseMgy", exact(costs.doseMgy())).put("money", exact(costs.money()));
    }

    /** Without the last digits of a sum of doubles. */
    static BigDecimal exact(double number) {
        return Millimetres.of(number, RoundingMode.HALF_EVEN);
    }
}
