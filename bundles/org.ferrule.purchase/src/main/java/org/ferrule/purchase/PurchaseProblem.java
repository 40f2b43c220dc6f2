/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.ferrule.shelf.stock.Shelf;

/**
 * What should be ready, what is there, what can be bought.
 *
 * @param cases cases, each id once; a unit that one of them counts on is not there for another
 * @param shelf what is there
 * @param offers what can be bought, each item once
 * @param rungsPerAxis number of rungs that each axis of each case should have ready, all at once; zero or more
 * @param exceptions other numbers of rungs by axis
 * @param goal what the purchase should have least of
 */
public record PurchaseProblem(List<PurchaseCase> cases, Shelf shelf, List<Offer> offers, int rungsPerAxis,
        Map<String, Integer> exceptions, Goal goal) {

    /**
     * Checks that nothing stands twice and that prices are known where they are asked for.
     *
     * @throws IllegalArgumentException naming the case or item that stands twice, the item without a price, or a
     *         negative number of rungs
     */
    public PurchaseProblem {
        cases = List.copyOf(cases);
        offers = List.copyOf(offers);
        exceptions = Map.copyOf(exceptions);
        if (rungsPerAxis < 0 || exceptions.values().stream().anyMatch(rungs -> rungs < 0)) {
            throw new IllegalArgumentException("rungs per axis: " + rungsPerAxis + ", but " + exceptions);
        }
        checkOnce("case", cases.stream().map(PurchaseCase::id).toList());
        checkOnce("offer", offers.stream().map(Offer::item).toList());
        if (goal == Goal.CHEAPEST) {
            offers.stream().filter(offer -> offer.price().isEmpty()).findFirst().ifPresent(offer -> {
                throw new IllegalArgumentException("no price of item \"" + offer.item() + "\"");
            });
        }
    }

    /** Returns how many rungs an axis should have ready. */
    public int rungsOf(String axis) {
        return exceptions.getOrDefault(axis, rungsPerAxis);
    }

    /** Returns the offer of an item. */
    public Optional<Offer> offerOf(String item) {
        return offers.stream().filter(offer -> offer.item().equals(item)).findFirst();
    }

    private static void checkOnce(String what, List<String> ids) {
        Set<String> seen = new HashSet<>();
        ids.stream().filter(id -> !seen.add(id)).findFirst().ifPresent(id -> {
            throw new IllegalArgumentException("two of " + what + " \"" + id + "\"");
        });
    }
}
