/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.shelf.ready.Need;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;

/** The best purchase by trying everything: every choice of just enough rungs, and for every unit every place to take it from. */
final class BruteForce {
    private final PurchaseProblem problem;
    private final List<Rung> rungs = new ArrayList<>();
    private final List<PurchaseCase> owners = new ArrayList<>();

    /** A unit that is needed. */
    private record Slot(PurchaseCase planned, Need need) {
    }

    private BruteForce(PurchaseProblem problem) {
        this.problem = problem;
        for (PurchaseCase planned : problem.cases()) {
            for (Rung rung : planned.rungs()) {
                rungs.add(rung);
                owners.add(planned);
            }
        }
    }

    /** The number of units, or the sum of prices; empty if nothing covers the problem. */
    static Optional<BigDecimal> best(PurchaseProblem problem) {
        BruteForce force = new BruteForce(problem);
        Optional<BigDecimal> best = Optional.empty();
        for (int chosen = 0; chosen < 1 << force.rungs.size(); chosen++) {
            if (force.isJustEnough(chosen)) {
                Optional<BigDecimal> cost = force.cost(force.slots(chosen), 0, Map.of(), new HashMap<>());
                best = lower(best, cost);
            }
        }
        return best;
    }

    private static Optional<BigDecimal> lower(Optional<BigDecimal> one, Optional<BigDecimal> two) {
        return one.isEmpty() ? two : two.isEmpty() ? one : Optional.of(one.get().min(two.get()));
    }

    private boolean isJustEnough(int chosen) {
        for (PurchaseCase planned : problem.cases()) {
            for (String axis : planned.axes()) {
                int ready = 0;
                for (int i = 0; i < rungs.size(); i++) {
                    boolean counts = owners.get(i) == planned && rungs.get(i).axis().equals(axis);
                    ready += counts && (chosen >> i & 1) == 1 ? 1 : 0;
                }
                if (ready != problem.rungsOf(axis)) {
                    return false;
                }
            }
        }
        return true;
    }

    private List<Slot> slots(int chosen) {
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < rungs.size(); i++) {
            if ((chosen >> i & 1) == 1) {
                for (Need need : rungs.get(i).needs()) {
                    for (int unit = 0; unit < need.count(); unit++) {
                        slots.add(new Slot(owners.get(i), need));
                    }
                }
            }
        }
        return slots;
    }

    /** The least that the slots from one on cost, if each lot has so many units left. */
    private Optional<BigDecimal> cost(List<Slot> slots, int at, Map<Lot, Integer> left,
            Map<Object, Optional<BigDecimal>> known) {
        if (at == slots.size()) {
            return Optional.of(BigDecimal.ZERO);
        }
        Object state = Map.entry(at, Map.copyOf(left));
        if (!known.containsKey(state)) {
            Optional<BigDecimal> best = Optional.empty();
            for (String id : slots.get(at).need().items()) {
                best = lower(best, taken(slots, at, id, left, known));
                best = lower(best, bought(slots, at, id, left, known));
            }
            known.put(state, best);
        }
        return known.get(state);
    }

    private Optional<BigDecimal> taken(List<Slot> slots, int at, String id, Map<Lot, Integer> left,
            Map<Object, Optional<BigDecimal>> known) {
        Optional<BigDecimal> best = Optional.empty();
        for (Item item : problem.shelf().items()) {
            for (Lot lot : item.id().equals(id) ? item.lots() : List.<Lot>of()) {
                int units = left.getOrDefault(lot, lot.quantity());
                if (units > 0 && !lot.expiry().orElseThrow().isBefore(slots.get(at).planned().date())) {
                    Map<Lot, Integer> after = new HashMap<>(left);
                    after.put(lot, units - 1);
                    best = lower(best, cost(slots, at + 1, after, known));
                }
            }
        }
        return best;
    }

    private Optional<BigDecimal> bought(List<Slot> slots, int at, String id, Map<Lot, Integer> left,
            Map<Object, Optional<BigDecimal>> known) {
        for (Offer offer : problem.offers()) {
            if (offer.item().equals(id) && (offer.expiry().isEmpty()
                    || !offer.expiry().get().isBefore(slots.get(at).planned().date()))) {
                BigDecimal unit = problem.goal() == Goal.SMALLEST ? BigDecimal.ONE : offer.price().orElseThrow();
                return cost(slots, at + 1, left, known).map(unit::add);
            }
        }
        return Optional.empty();
    }
}
