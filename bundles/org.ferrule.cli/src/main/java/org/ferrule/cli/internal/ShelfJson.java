/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import org.ferrule.plansheet.ready.ReadyWords;
import org.ferrule.plansheet.words.BailOutMark;
import org.ferrule.shelf.ready.CaseAnswer;
import org.ferrule.shelf.ready.Contention;
import org.ferrule.shelf.ready.NeedAnswer;
import org.ferrule.shelf.stock.Item;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A shelf as JSON. */
public final class ShelfJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final ShelfRun run;
    private final ReadyWords words = new ReadyWords();

    public ShelfJson(ShelfRun run) {
        this.run = run;
    }

    /** Stock, what is below par, what has expired, and the cases. */
    public ObjectNode write() {
        ObjectNode node = NODES.objectNode().put("day", run.day().toString());
        ArrayNode items = node.putArray("items");
        run.shelf().items().forEach(item -> items.add(item(item)));
        ArrayNode below = node.putArray("belowPar");
        run.belowPar().forEach(b -> below.addObject().put("item", b.item().id()).put("usable", b.usable())
                .put("par", b.item().parLevel()).put("missing", b.missing()));
        ArrayNode expired = node.putArray("expired");
        run.expired().forEach(e -> expired.add(EquipmentJson.lot(e.lot(),
                NODES.objectNode().put("item", e.item().id()).put("count", e.lot().quantity()))));
        ArrayNode cases = node.putArray("cases");
        run.cases().cases().forEach(c -> cases.add(plannedCase(c)));
        ArrayNode contentions = node.putArray("contentions");
        run.cases().contentions().forEach(c -> contentions.add(contention(c)));
        return node;
    }

    private ObjectNode item(Item item) {
        ObjectNode node = NODES.objectNode().put("item", item.id()).put("name", item.name())
                .put("device", item.device().orElse(null)).put("di", item.di().orElse(null))
                .put("usable", item.usableOn(run.day())).put("quantity", item.quantity()).put("par", item.parLevel())
                .put("price", item.price().orElse(null));
        ArrayNode lots = node.putArray("lots");
        item.lots().forEach(lot -> lots.add(EquipmentJson.lot(lot, NODES.objectNode().put("count", lot.quantity()))));
        return node;
    }

    private ObjectNode plannedCase(CaseAnswer answer) {
        ObjectNode node = NODES.objectNode().put("case", answer.plannedCase().id())
                .put("day", answer.plannedCase().date().toString())
                .put("readiness", Names.word(answer.readiness().name()));
        ArrayNode needs = node.putArray("needs");
        answer.needs().forEach(need -> needs.add(need(need)));
        ArrayNode bailOut = node.putArray("bailOut");
        run.plan(answer.plannedCase().id()).bailOut().forEach(b -> bailOut.addObject().put("role", b.role().id())
                .put("mark", BailOutMark.of(b).word()));
        return node;
    }

    private ObjectNode need(NeedAnswer answer) {
        ObjectNode node = NODES.objectNode().put("need", answer.need().id()).put("count", answer.need().count())
                .put("readiness", Names.word(answer.readiness().name()));
        ArrayNode picks = node.putArray("picks");
        answer.picks().forEach(pick -> picks.add(EquipmentJson.pick(pick)));
        ArrayNode reasons = node.putArray("reasons");
        answer.reasons().forEach(reason -> reasons.addObject().put("code", Names.word(reason.code().name()))
                .put("text", words.say(reason)));
        return node;
    }

    private static ObjectNode contention(Contention contention) {
        ObjectNode node = NODES.objectNode().put("item", contention.item()).put("units", contention.units());
        putClaims(node.putArray("takers"), contention.takers());
        putClaims(node.putArray("losers"), contention.losers());
        return node;
    }

    private static void putClaims(ArrayNode node, Iterable<Contention.Claim> claims) {
        claims.forEach(claim -> node.addObject().put("case", claim.plannedCase()).put("need", claim.need()));
    }
}
