/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.ferrule.engine.limits.CaseLimit;
import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.plan.BailOut;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.StopStatus;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.plansheet.words.BailOutMark;
import org.ferrule.plansheet.words.Budget;
import org.ferrule.plansheet.why.OrderReasons;
import org.ferrule.plansheet.words.PlanWords;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A plan as JSON. The chance that the whole plan succeeds is never written. */
public final class PlanJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Plan plan;
    private final PlanWords words;
    private final List<CaseLimit> limits;
    private final Optional<OrderReasons> reasons;
    private final EquipmentJson equipment;

    /**
     * Writes a plan.
     *
     * @param limits from what the case states
     * @param reasons what its order hangs on; absent where nobody asked
     */
    public PlanJson(Plan plan, PlanWords words, List<CaseLimit> limits, Optional<OrderReasons> reasons) {
        this.plan = plan;
        this.words = words;
        this.limits = List.copyOf(limits);
        this.reasons = reasons;
        this.equipment = new EquipmentJson(words);
    }

    /** The whole plan. */
    public ObjectNode write() {
        ObjectNode node = NODES.objectNode().put("case", plan.file().title()).put("day", plan.file().day().toString());
        node.putObject("ladder").put("title", plan.ladder().title()).put("revision", plan.ladder().revision());
        node.put("wireCheck", Names.word(plan.wireCheck().name())).put("crossed", plan.progress().crossed())
                .put("canGoOn", plan.canGoOn());
        node.set("system", system(plan.progress().system()));
        node.set("delivery", plan.delivery().map(this::single).orElse(null));
        ArrayNode looks = node.putArray("looks");
        plan.looks().forEach(look -> looks.add(look.id()));
        RungJson rungs = new RungJson(plan, words);
        ArrayNode steps = node.putArray("rungs");
        plan.rungs().forEach(rung -> steps.add(rungs.write(rung)));
        putLists(node);
        node.put("objective", plan.file().aim().objective().word())
                .put("stoppingCost", EquipmentJson.exact(plan.file().aim().stoppingCost()))
                .put("exact", plan.order().isExact()).put("gap", EquipmentJson.exact(plan.order().gap()));
        node.set("sensitivity", reasons.map(ReasonsJson::write).orElse(null));
        return node;
    }

    private void putLists(ObjectNode node) {
        ArrayNode leftOut = node.putArray("leftOut");
        plan.leftOut().forEach(l -> leftOut.add(leftOut(l)));
        ArrayNode bailOut = node.putArray("bailOut");
        plan.bailOut().forEach(b -> bailOut.add(bailOut(b)));
        ArrayNode stops = node.putArray("stops");
        plan.stops().forEach(s -> stops.add(stop(s)));
        ArrayNode exits = node.putArray("exits");
        plan.exits().forEach(exit -> exits.add(exit.id()));
        ArrayNode budgets = node.putArray("budgets");
        Budget.of(plan).forEach(b -> budgets.add(budget(b)));
        ArrayNode assumptions = node.putArray("assumptions");
        words.assumptions().all(plan).forEach(assumptions::add);
        ArrayNode stated = node.putArray("limits");
        limits.forEach(limit -> stated.addObject().put("about", Names.word(limit.kind().name()))
                .put("text", limit.text()).put("source", limit.source().isEmpty() ? null : limit.source())
                .put("reached", limit.reached()));
        ArrayNode log = node.putArray("logProblems");
        plan.progress().problems().forEach(problem -> log.addObject().put("entry", problem.entry() + 1)
                .put("kind", Names.word(problem.kind().name())).put("text", words.status().problem(problem)));
    }

    private static ObjectNode system(SystemState state) {
        ObjectNode node = NODES.objectNode().put("sheath", state.sheath().orElse(null))
                .put("valve", state.valve().orElse(null)).put("guide", state.guide());
        node.set("extension", state.extension().map(placed -> NODES.objectNode().put("extension", placed.device())
                .put("protrusionMm", Millimetres.of(placed.protrusion()))).orElse(null));
        return node.put("microcatheter", state.microcatheter().orElse(null))
                .put("mainWire", state.mainWire().orElse(null)).put("secondWire", state.secondWire().orElse(null))
                .put("anchor", state.anchor().orElse(null));
    }

    private ObjectNode single(MoveAnswer.Single answer) {
        Optional<Candidate> nearest = answer.answer().stream().flatMap(a -> a.ranked().stream()).findFirst();
        ObjectNode node = equipment.candidate(NODES.objectNode(), nearest);
        node.set("lacks", equipment.lacks(answer.lacks()));
        return node;
    }

    private ObjectNode bailOut(BailOut bailOut) {
        ObjectNode node = NODES.objectNode().put("role", bailOut.role().id())
                .put("name", words.names().role(bailOut.role())).put("mark", BailOutMark.of(bailOut).word());
        equipment.candidate(node, bailOut.answer().answer().flatMap(RoleAnswer::chosen));
        node.set("lacks", equipment.lacks(bailOut.answer().lacks()));
        return node;
    }

    private ObjectNode leftOut(LeftOut leftOut) {
        ObjectNode node = NODES.objectNode().put("move", leftOut.move().id()).put("name", words.leftOut().name(leftOut))
                .put("why", Names.word(leftOut.why().name()));
        node.set("lacks", equipment.lacks(leftOut.lacks()));
        ArrayNode remedies = node.putArray("remedies");
        leftOut.remedies().forEach(remedy -> remedies.addObject().put("kind", Names.kind(remedy)).put("text",
                words.leftOut().remedy(remedy)));
        return node;
    }

    private ObjectNode stop(StopStatus status) {
        return NODES.objectNode().put("id", status.rule().id()).put("words", words.status().stop(status))
                .put("reached", status.reached()).put("rung", boxed(status.rung()));
    }

    private static ObjectNode budget(Budget budget) {
        return NODES.objectNode().put("resource", budget.resource().word())
                .put("used", EquipmentJson.exact(budget.used())).put("expected", EquipmentJson.exact(budget.expected()))
                .put("worst", EquipmentJson.exact(budget.worst()))
                .put("limit", budget.limit().isPresent() ? EquipmentJson.exact(budget.limit().getAsDouble()) : null)
                .put("beyond", boxed(budget.beyond()));
    }

    private static Integer boxed(OptionalInt number) {
        return number.isPresent() ? Integer.valueOf(number.getAsInt()) : null;
    }
}
