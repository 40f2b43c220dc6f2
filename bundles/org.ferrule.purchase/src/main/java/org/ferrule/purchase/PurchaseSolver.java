/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.purchase.IntegerProgramme.Outcome;
import org.ferrule.purchase.IntegerProgramme.State;
import org.ferrule.purchase.Purchase.Order;
import org.ferrule.purchase.Purchase.Confirmation;

/** Finds what to buy. */
public final class PurchaseSolver {
    private static final Duration LIMIT = Duration.ofSeconds(20);

    private PurchaseSolver() {
    }

    /**
     * Returns the best purchase, or what no purchase can cover. Each search of the solver ends after 20 seconds; what is
     * not settled then is told as open, or undecided.
     *
     * @param problem what should be ready
     * @throws IllegalArgumentException naming a price that is too large for the solver
     */
    public static PurchaseAnswer solve(PurchaseProblem problem) {
        return solve(problem, LIMIT);
    }

    /**
     * Returns the best purchase that is found in a time.
     *
     * @param problem what should be ready
     * @param limit time for each search of the solver
     * @throws IllegalArgumentException as above
     */
    public static PurchaseAnswer solve(PurchaseProblem problem, Duration limit) {
        PurchaseModel model = PurchaseModel.ofWeights(problem, Weights.of(problem)::of, limit);
        Outcome outcome = model.programme().minimise();
        if (outcome.isSolution()) {
            return checked(problem, model.allocations(outcome.values()),
                    outcome.state() == State.CONFIRMED ? Confirmation.CONFIRMED : Confirmation.OPEN);
        }
        return outcome.state() == State.NONE ? GapSearch.of(problem, limit) : new Undecided();
    }

    private static Purchase checked(PurchaseProblem problem, List<Allocation> allocations, Confirmation confirmation) {
        Map<String, Integer> bought = new LinkedHashMap<>();
        allocations.stream().filter(units -> units.lot().isEmpty())
                .forEach(units -> bought.merge(units.item(), units.count(), Integer::sum));
        List<Order> orders = problem.offers().stream().filter(offer -> bought.containsKey(offer.item()))
                .map(offer -> new Order(offer.item(), bought.get(offer.item()))).toList();
        Purchase purchase = new Purchase(orders, orders.stream().mapToInt(Order::count).sum(), cost(problem, orders),
                confirmation, allocations);
        List<String> contradictions = PurchaseCheck.contradictions(problem, purchase);
        if (!contradictions.isEmpty()) {
            throw new IllegalStateException("a purchase that does not cover what it should: " + contradictions);
        }
        return purchase;
    }

    private static Optional<BigDecimal> cost(PurchaseProblem problem, List<Order> orders) {
        Optional<BigDecimal> sum = Optional.of(BigDecimal.ZERO);
        for (Order order : orders) {
            Optional<BigDecimal> price = problem.offerOf(order.item()).flatMap(Offer::price);
            sum = sum
                    .flatMap(before -> price.map(each -> before.add(each.multiply(BigDecimal.valueOf(order.count())))));
        }
        return sum;
    }
}
