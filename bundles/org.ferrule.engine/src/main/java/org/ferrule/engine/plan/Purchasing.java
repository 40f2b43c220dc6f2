/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.plan.Requirement;
import org.ferrule.escalation.plan.Requirements;
import org.ferrule.purchase.Goal;
import org.ferrule.purchase.Offer;
import org.ferrule.purchase.PurchaseCase;
import org.ferrule.purchase.PurchaseProblem;
import org.ferrule.purchase.Rung;
import org.ferrule.shelf.ready.Need;
import org.ferrule.shelf.stock.Item;

/**
 * Makes the question what to buy so that cases are ready. Everything that would pass in a case may be bought; what the
 * shelf has no item of is offered under the id of the device, without a price. Equipment that is no device is not
 * bought.
 */
public final class Purchasing {
    private final Stock stock;
    private final Map<String, Offer> offers = new LinkedHashMap<>();

    private Purchasing(Stock stock) {
        this.stock = stock;
    }

    /**
     * The question for cases that share a shelf.
     *
     * @param cases by what they are called; at least one
     * @param rungsPerAxis how many techniques of each axis should be ready in each case, all at once
     * @param goal what the purchase should have least of; where it is the price, what has none is not offered
     * @throws IllegalArgumentException naming the case that has another shelf than the first
     */
    public static PurchaseProblem problem(Map<String, AssembledCase> cases, int rungsPerAxis, Goal goal) {
        Stock shared = cases.values().iterator().next().stock();
        Purchasing purchasing = new Purchasing(shared);
        List<PurchaseCase> planned = new ArrayList<>();
        cases.forEach((name, assembled) -> {
            if (!assembled.stock().equals(shared)) {
                throw new IllegalArgumentException("case \"" + name + "\" has another shelf than the first");
            }
            planned.add(new PurchaseCase(name, assembled.file().day(), purchasing.rungs(assembled)));
        });
        List<Offer> offered = purchasing.offers.values().stream()
                .filter(offer -> goal != Goal.CHEAPEST || offer.price().isPresent()).toList();
        return new PurchaseProblem(planned, shared.shelf(), offered, rungsPerAxis, Map.of(), goal);
    }

    private List<Rung> rungs(AssembledCase assembled) {
        return Requirements.of(assembled.instruments(), assembled.ladder(), assembled.file()).stream()
                .map(r -> new Rung(r.technique().id(), r.technique().axis().word(),
                        r.parts().stream().map(this::need).toList()))
                .toList();
    }

    private Need need(Requirement.Part part) {
        List<String> preferred = part.equipment()
                .map(word -> stock.ofEquipment(word).stream().map(Item::id).toList())
                .orElseGet(() -> items(part.fitting()));
        List<String> second = items(part.tight()).stream().filter(id -> !preferred.contains(id)).toList();
        return new Need(part.move() + "/" + part.role().id(), part.role().count(), preferred, second);
    }

    /** The items of devices, each offered; the device itself where the shelf has no item of it. */
    private List<String> items(List<String> devices) {
        return devices.stream().flatMap(this::items).distinct().toList();
    }

    private Stream<String> items(String device) {
        List<Item> items = stock.ofDevice(device);
        if (items.isEmpty()) {
            offers.putIfAbsent(device, new Offer(device, Optional.empty(), Optional.empty()));
            return Stream.of(device);
        }
        items.forEach(item -> offers.putIfAbsent(item.id(), new Offer(item.id(), item.price(), Optional.empty())));
        return items.stream().map(Item::id);
    }
}
