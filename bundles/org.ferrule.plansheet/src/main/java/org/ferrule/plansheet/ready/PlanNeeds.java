/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.ready;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Role;
import org.ferrule.plansheet.words.PlanNames;
import org.ferrule.shelf.ready.Need;
import org.ferrule.shelf.ready.PlannedCase;
import org.ferrule.shelf.stock.Item;

/**
 * What a plan needs of the shelf: the units of its steps in their order, other items that would do as a second choice, and
 * what techniques lack that are left out for want of a box. Equipment that is not used up, and what must only be at hand,
 * is not counted.
 */
public final class PlanNeeds {
    private final Stock stock;
    private final PlanNames names;
    private final List<Need> needs = new ArrayList<>();

    private PlanNeeds(Stock stock, PlanNames names) {
        this.stock = stock;
        this.names = names;
    }

    /**
     * The case of a plan, ready to be asked about together with others.
     *
     * @param id what the case is called
     * @param stock of which the items are
     */
    public static PlannedCase of(String id, Plan plan, Stock stock, PlanNames names) {
        PlanNeeds all = new PlanNeeds(stock, names);
        plan.rungs().stream().filter(rung -> !rung.taken().isEmpty()).forEach(all::add);
        plan.leftOut().forEach(all::add);
        return new PlannedCase(id, plan.file().day(), all.needs);
    }

    private void add(Rung rung) {
        for (RoleAnswer answer : rung.equipment().roles()) {
            if (answer.role().selection().equipment().isEmpty()) {
                List<Candidate> usable = answer.ranked().stream().filter(c -> c.suitability().isUsable()).toList();
                Set<String> first = items(usable.stream().limit(1));
                Set<String> others = items(usable.stream().skip(1));
                others.removeAll(first);
                needs.add(new Need(id(rung.move().id(), answer.role()), answer.role().count(), List.copyOf(first),
                        List.copyOf(others)));
            }
        }
    }

    private static Set<String> items(Stream<Candidate> candidates) {
        Set<String> items = new LinkedHashSet<>();
        candidates.forEach(candidate -> items.addAll(candidate.supply().items()));
        return items;
    }

    private void add(LeftOut leftOut) {
        for (Lack lack : leftOut.lacks()) {
            if (lack instanceof Lack.Expired expired) {
                add(leftOut, expired.role(), List.of(expired.item()));
            } else if (lack instanceof Lack.UsedUp used) {
                add(leftOut, used.role(), List.of(used.item()));
            } else if (lack instanceof Lack.NotOnShelf absent && absent.role().selection().equipment().isEmpty()) {
                add(leftOut, absent.role(), absent.wouldServe().stream()
                        .flatMap(device -> stock.ofDevice(device).stream()).map(Item::id).distinct().toList());
            }
        }
    }

    private void add(LeftOut leftOut, Role role, List<String> items) {
        needs.add(new Need(id(leftOut.move().id(), role), role.count(), items, List.of()));
    }

    private String id(String move, Role role) {
        return names.move(move) + ": " + names.role(role);
    }
}
