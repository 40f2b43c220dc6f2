/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.BigDecimal;
import java.util.Map;

import org.ferrule.engine.closed.ClosedCase;
import org.ferrule.engine.closed.Ending;
import org.ferrule.engine.closed.LoggedTry;
import org.ferrule.engine.closed.PlannedStep;
import org.ferrule.engine.closed.ResourceTotal;
import org.ferrule.engine.closed.UsedDevice;
import org.ferrule.escalation.technique.Resource;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The record of a closed case as JSON. */
public final class RecordJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final Map<Resource, String> KEYS = Map.of(Resource.TIME, "minutes", Resource.CONTRAST, "contrastMl",
            Resource.DOSE, "doseMgy", Resource.MONEY, "money");

    private RecordJson() {
    }

    /** The whole record. */
    public static ObjectNode write(ClosedCase closed) {
        ObjectNode node = NODES.objectNode().put("closed", closed.closed()).put("ended", closed.ended().getLiteral());
        ArrayNode plan = node.putArray("plan");
        closed.plan().forEach(step -> plan.add(step(step)));
        ArrayNode log = node.putArray("log");
        closed.log().forEach(entry -> log.add(logged(entry)));
        ArrayNode totals = node.putArray("totals");
        closed.totals().forEach(total -> totals.add(total(total)));
        ArrayNode devices = node.putArray("devices");
        closed.devices().forEach(device -> devices.add(device(device)));
        ArrayNode documents = node.putArray("documents");
        closed.documents().forEach(document -> documents.addObject().put("file", document.file())
                .put("revision", orNull(document.revision())).put("sha256", document.sha256())
                .put("today", document.standing().word()));
        return node;
    }

    private static ObjectNode step(PlannedStep step) {
        ObjectNode node = NODES.objectNode().put("move", step.move()).put("name", step.name());
        ArrayNode endings = node.putArray("outcomes");
        step.endings().stream().map(Ending::word).forEach(endings::add);
        ArrayNode equipment = node.putArray("equipment");
        step.equipment().forEach(planned -> {
            ArrayNode opened = equipment.addObject().put("device", planned.device()).put("name", planned.name())
                    .putArray("opened");
            planned.opened().forEach(device -> opened.add(device(device)));
        });
        return node;
    }

    private static ObjectNode device(UsedDevice device) {
        return NODES.objectNode().put("device", device.device()).put("item", device.item()).put("name", device.name())
                .put("lot", orNull(device.lot())).put("expiry", orNull(device.expiry()));
    }

    private static ObjectNode logged(LoggedTry entry) {
        ObjectNode node = NODES.objectNode().put("move", entry.move()).put("name", entry.name())
                .put("outcome", entry.ending().word()).put("planned", entry.planned());
        for (Resource resource : Resource.values()) {
            node.put(KEYS.get(resource), entry.used().get(resource));
        }
        return node.put("remark", orNull(entry.remark()));
    }

    private static ObjectNode total(ResourceTotal total) {
        BigDecimal limit = total.limit().orElse(null);
        return NODES.objectNode().put("resource", total.resource().word()).put("before", total.before())
                .put("logged", total.logged()).put("total", total.total()).put("limit", limit)
                .put("exceeded", total.exceeded());
    }

    private static String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
