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

import org.ferrule.purchase.Purchase.Order;
import org.ferrule.shelf.ready.Need;
import org.ferrule.shelf.stock.Lot;

/**
 * Checks a purchase with whole numbers, without a solver: that the units it counts on are there or bought, may be used
 * on the day, serve the need, and that each axis has its rungs. It says nothing of whether a better purchase exists.
 */
public final class PurchaseCheck {
    private final PurchaseProblem problem;
    private final Purchase purchase;
    private final List<String> contradictions = new ArrayList<>();

    private PurchaseCheck(PurchaseProblem problem, Purchase purchase) {
        this.problem = problem;
        this.purchase = purchase;
    }

    /**
     * Returns what is wrong with a purchase; nothing if it covers all that was asked for.
     *
     * @param problem what should be ready
     * @param purchase what is to be bought
     */
    public static List<String> contradictions(PurchaseProblem problem, Purchase purchase) {
        PurchaseCheck check = new PurchaseCheck(problem, purchase);
        purchase.allocations().forEach(check::checkUnits);
        check.checkLots();
        check.checkOrders();
        problem.cases().forEach(check::checkCase);
        return List.copyOf(check.contradictions);
    }

    private void checkUnits(Allocation units) {
        Optional<PurchaseCase> planned = problem.cases().stream().filter(c -> c.id().equals(units.plannedCase()))
                .findFirst();
        boolean serves = planned.stream().flatMap(c -> c.rungs().stream())
                .filter(rung -> rung.id().equals(units.rung())).flatMap(rung -> rung.needs().stream())
                .anyMatch(need -> need.id().equals(units.need()) && need.items().contains(units.item()));
        boolean usable = planned.isPresent() && units.lot().map(lot -> lot.isUsableOn(planned.get().date()))
                .orElseGet(() -> problem.offerOf(units.item()).filter(o -> o.isUsableOn(planned.get().date()))
                        .isPresent());
        require(serves && usable && units.count() > 0, "cannot be used: " + units);
    }

    private void checkLots() {
        Map<Map.Entry<String, Lot>, Integer> taken = new HashMap<>();
        purchase.allocations().forEach(units -> units.lot()
                .ifPresent(lot -> taken.merge(Map.entry(units.item(), lot), units.count(), Math::addExact)));
        taken.forEach((lot, count) -> {
            boolean there = problem.shelf().item(lot.getKey()).stream()
                    .anyMatch(item -> item.lots().contains(lot.getValue()));
            require(there && count <= lot.getValue().quantity(), count + " are not there: " + lot);
        });
    }

    private void checkOrders() {
        Map<String, Integer> left = new HashMap<>();
        purchase.orders().forEach(order -> left.merge(order.item(), order.count(), Math::addExact));
        purchase.allocations().stream().filter(units -> units.lot().isEmpty())
                .forEach(units -> left.merge(units.item(), -units.count(), Math::addExact));
        left.forEach((item, count) -> require(count == 0, "bought and counted on differ by " + count + ": " + item));
        int units = purchase.orders().stream().mapToInt(Order::count).reduce(0, Math::addExact);
        require(units == purchase.units(), units + " units, not " + purchase.units());
        purchase.cost().ifPresent(cost -> require(cost.compareTo(sum()) == 0, "cost " + sum() + ", not " + cost));
    }

    private BigDecimal sum() {
        return purchase.orders().stream().map(order -> problem.offerOf(order.item()).flatMap(Offer::price)
                .orElse(BigDecimal.ZERO).multiply(BigDecimal.valueOf(order.count())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private void checkCase(PurchaseCase planned) {
        for (String axis : planned.axes()) {
            long ready = planned.rungsOf(axis).stream().filter(rung -> isReady(planned, rung)).count();
            require(ready >= problem.rungsOf(axis), ready + " of " + problem.rungsOf(axis) + " rungs: case \""
                    + planned.id() + "\", axis \"" + axis + "\"");
        }
    }

    private boolean isReady(PurchaseCase planned, Rung rung) {
        return rung.needs().stream().allMatch(need -> units(planned, rung, need) == need.count());
    }

    private int units(PurchaseCase planned, Rung rung, Need need) {
        return purchase.allocations().stream().filter(units -> units.plannedCase().equals(planned.id())
                && units.rung().equals(rung.id()) && units.need().equals(need.id())).mapToInt(Allocation::count)
                .reduce(0, Math::addExact);
    }

    private void require(boolean holds, String contradiction) {
        if (!holds) {
            contradictions.add(contradiction);
        }
    }
}
