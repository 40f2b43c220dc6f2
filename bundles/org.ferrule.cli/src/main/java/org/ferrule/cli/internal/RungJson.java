/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Chance;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.plansheet.words.SystemChange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Steps as JSON. Chances are the inputs that they are; that a step is reached has none. */
final class RungJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Plan plan;
    private final PlanWords words;
    private final EquipmentJson equipment;

    RungJson(Plan plan, PlanWords words) {
        this.plan = plan;
        this.words = words;
        this.equipment = new EquipmentJson(words);
    }

    ObjectNode write(Rung rung) {
        ObjectNode node = NODES.objectNode().put("number", rung.number()).put("move", rung.move().id())
                .put("name", words.names().move(rung.move().id())).put("kind", rung.isSetup() ? "set-up" : "try");
        putTry(rung, node);
        node.put("hazard", rung.move().hazard().word())
                .put("offLabel", rung.move().advice().offLabel().orElse(null));
        double index = rung.placement().index();
        node.put("index", Double.isInfinite(index) ? null : EquipmentJson.exact(index))
                .put("block", rung.placement().block()).put("why", words.rungs().why(rung, plan));
        ArrayNode roles = node.putArray("roles");
        rung.equipment().roles().forEach(role -> roles.add(equipment.role(role)));
        ArrayNode taken = node.putArray("taken");
        rung.taken().forEach(pick -> taken.add(EquipmentJson.pick(pick)));
        putAdvice(rung, node);
        node.set("costs", EquipmentJson.costs(rung.costs()));
        node.set("expected", EquipmentJson.costs(rung.expected()));
        node.set("worst", EquipmentJson.costs(rung.worst()));
        ArrayNode beyond = node.putArray("beyond");
        rung.beyond().stream().sorted().forEach(resource -> beyond.add(resource.word()));
        return node.put("delivery", rung.delivery().map(Verdict::word).orElse(null));
    }

    private void putTry(Rung rung, ObjectNode node) {
        if (rung.move() instanceof Technique technique) {
            Chance chance = technique.tries().get(rung.attempt() - 1).chance();
            node.put("attempt", rung.attempt()).put("tries", technique.tries().size())
                    .put("axis", technique.axis().word());
            node.putObject("chance").put("assumed", EquipmentJson.exact(chance.mean()))
                    .put("ordered", EquipmentJson.exact(rung.placement().step().chance()))
                    .put("priorSuccesses", chance.prior().successes()).put("priorFailures", chance.prior().failures())
                    .put("prior", chance.prior().label()).put("successes", chance.successes())
                    .put("failures", chance.failures());
        }
    }

    private void putAdvice(Rung rung, ObjectNode node) {
        ArrayNode system = node.putArray("system");
        if (rung.isSetup()) {
            SystemChange.between(rung.equipment().before(), rung.equipment().after())
                    .forEach(change -> system.addObject().put("slot", change.slot().word())
                            .put("was", change.was().orElse(null)).put("is", change.is().orElse(null)));
        }
        ArrayNode changes = node.putArray("changes");
        rung.move().advice().changes().forEach(changes::add);
        ArrayNode cautions = node.putArray("cautions");
        rung.move().advice().cautions().forEach(cautions::add);
        rung.equipment().roles().stream().flatMap(role -> role.chosen().stream())
                .flatMap(c -> words.fits().cautions(c.suitability()).stream()).distinct().forEach(cautions::add);
        node.put("stop", rung.move().advice().stop());
    }
}
