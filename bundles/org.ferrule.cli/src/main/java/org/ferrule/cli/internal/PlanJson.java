/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;

import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.plan.BailOut;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.plan.StopStatus;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.shelf.stock.Pick;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A plan as one JSON object. */
public final class PlanJson {
    private final PlanWords words;

    public PlanJson(PlanWords words) {
        this.words = words;
    }

    /** Writes it. */
    public ObjectNode write(Plan plan) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("title", plan.file().title()).put("day", plan.file().day().toString());
        node.put("wireCheck", word(plan.wireCheck())).put("crossed", plan.progress().crossed());
        node.put("canGoOn", plan.canGoOn());
        node.put("objective", plan.file().aim().objective().word());
        node.put("expectedCost", plan.order().expectedCost()).put("lowerBound", plan.order().lowerBound());
        node.put("exact", plan.order().isExact());
        all(node.putArray("rungs"), plan.rungs(), (array, rung) -> write(array.addObject(), rung, plan));
        all(node.putArray("leftOut"), plan.leftOut(), (array, left) -> write(array.addObject(), left));
        all(node.putArray("bailOut"), plan.bailOut(), (array, bail) -> write(array.addObject(), bail));
        all(node.putArray("stops"), plan.stops(), (array, stop) -> write(array.addObject(), stop));
        write(node.putObject("used"), plan.used());
        all(node.putArray("assumed"), words.assumptions().all(plan), ArrayNode::add);
        return node;
    }

    private void write(ObjectNode node, Rung rung, Plan plan) {
        node.put("number", rung.number()).put("move", rung.move().id()).put("name", rung.move().name());
        node.put("kind", rung.isSetup() ? "set-up" : "try").put("try", rung.attempt());
        node.put("hazard", rung.move().hazard().word());
        rung.move().advice().offLabel().ifPresent(reason -> node.put("offLabel", reason));
        if (!Double.isInfinite(rung.placement().index())) {
            node.put("index", rung.placement().index());
        }
        node.put("block", rung.placement().block()).put("why", words.rungs().why(rung, plan));
        all(node.putArray("roles"), rung.equipment().roles(), (array, role) -> write(array.addObject(), role));
        all(node.putArray("taken"), rung.taken(), (array, pick) -> write(array.addObject(), pick));
        all(node.putArray("changes"), words.rungs().changes(rung), ArrayNode::add);
        all(node.putArray("cautions"), rung.move().advice().cautions(), ArrayNode::add);
        node.put("stop", rung.move().advice().stop());
        write(node.putObject("costs"), rung.costs());
        write(node.putObject("expected"), rung.expected());
        write(node.putObject("worst"), rung.worst());
        all(node.putArray("beyond"), rung.beyond().stream().sorted().toList(), (array, r) -> array.add(r.word()));
        rung.delivery().ifPresent(verdict -> node.put("delivery", verdict.word()));
    }

    private void write(ObjectNode node, RoleAnswer role) {
        node.put("role", role.role().id()).put("asked", words.roles().asked(role.role()));
        role.chosen().flatMap(Candidate::device).ifPresent(device -> node.put("device", device));
        role.chosen().ifPresent(chosen -> node.put("verdict", chosen.suitability().verdict().word()));
        role.chosen().flatMap(chosen -> chosen.suitability().worstClearance())
                .ifPresent(clearance -> node.put("worstClearanceMm", Millimetres.of(clearance, RoundingMode.FLOOR)));
        role.choice().ifPresent(choice -> node.put("why", words.equipment().choice(choice)));
    }

    private static void write(ObjectNode node, Pick pick) {
        node.put("item", pick.item()).put("lot", pick.lot().lot()).put("count", pick.count());
        pick.lot().expiry().ifPresent(expiry -> node.put("expiry", expiry.toString()));
        node.put("location", pick.lot().location());
    }

    private void write(ObjectNode node, LeftOut leftOut) {
        node.put("move", leftOut.move().id()).put("why", word(leftOut.why()));
        all(node.putArray("lacks"), words.lacks().say(leftOut.lacks()), ArrayNode::add);
        all(node.putArray("remedies"), words.leftOut().remedies(leftOut), ArrayNode::add);
    }

    private void write(ObjectNode node, BailOut bailOut) {
        node.put("role", bailOut.role().id()).put("ready", bailOut.isReady());
        node.put("text", words.status().bailOut(bailOut));
    }

    private void write(ObjectNode node, StopStatus stop) {
        node.put("id", stop.rule().id()).put("reached", stop.reached());
        stop.rung().ifPresent(rung -> node.put("rung", rung));
        node.put("text", words.status().stop(stop));
    }

    private static void write(ObjectNode node, Costs costs) {
        for (Resource resource : Resource.values()) {
            node.put(resource.word(), costs.of(resource));
        }
    }

    private static <T> void all(ArrayNode array, List<T> values, BiConsumer<ArrayNode, T> add) {
        values.forEach(value -> add.accept(array, value));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
