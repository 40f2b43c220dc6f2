/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;

import org.ferrule.purchase.Purchase.Confirmation;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;
import org.ferrule.shelf.stock.Shelf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds for every problem. */
class PurchaseLawsTest {

    private static void check(int examples, Consumer<Random> law) {
        long seed = Long.getLong("QT_SEED", 0);
        for (int i = 0; i < examples; i++) {
            try {
                law.accept(new Random(seed + 1_000_003L * i));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("example " + i + " of seed " + seed + ": " + e.getMessage(), e);
            }
        }
    }

    private static Optional<BigDecimal> value(PurchaseProblem problem) {
        PurchaseAnswer answer = PurchaseSolver.solve(problem);
        if (answer instanceof Purchase purchase) {
            assertEquals(List.of(), PurchaseCheck.contradictions(problem, purchase));
            assertEquals(Confirmation.CONFIRMED, purchase.confirmation());
            return problem.goal() == Goal.SMALLEST ? Optional.of(BigDecimal.valueOf(purchase.units()))
                    : purchase.cost();
        }
        assertTrue(!assertInstanceOf(Uncoverable.class, answer).gaps().isEmpty());
        return Optional.empty();
    }

    private static void agreesWithTryingEverything(Random random) {
        PurchaseProblem problem = new RandomProblem(random, 4).draw(2, 4, 2);
        Optional<BigDecimal> expected = BruteForce.best(problem);
        Optional<BigDecimal> found = value(problem);
        assertEquals(expected.map(BigDecimal::stripTrailingZeros), found.map(BigDecimal::stripTrailingZeros),
                problem.toString());
    }

    @Test
    void agreesWithTryingEverything() {
        check(300, PurchaseLawsTest::agreesWithTryingEverything);
    }

    @Test
    @Tag("slow")
    void agreesWithTryingEverythingOnMany() {
        check(5000, PurchaseLawsTest::agreesWithTryingEverything);
    }

    @Test
    void moreStockNeverCostsMore() {
        check(60, random -> {
            PurchaseProblem problem = new RandomProblem(random, 6).draw(3, 6, 2);
            Optional<BigDecimal> before = value(problem);
            Optional<BigDecimal> after = value(withOneMore(problem, random));
            assertTrue(before.isEmpty() || after.isPresent() && after.get().compareTo(before.get()) <= 0,
                    before + " before, then " + after);
        });
    }

    private static PurchaseProblem withOneMore(PurchaseProblem problem, Random random) {
        List<Item> items = new ArrayList<>(problem.shelf().items());
        int i = random.nextInt(items.size());
        List<Lot> lots = new ArrayList<>(items.get(i).lots());
        lots.add(Problems.lot("more", random.nextInt(3) - 1, 1));
        items.set(i, items.get(i).withLots(lots));
        return new PurchaseProblem(problem.cases(), new Shelf(items), problem.offers(), problem.rungsPerAxis(),
                problem.exceptions(), problem.goal());
    }

    @Test
    void oneRungMoreNeverCostsLess() {
        check(60, random -> {
            PurchaseProblem problem = new RandomProblem(random, 6).draw(2, 6, 2);
            PurchaseProblem more = new PurchaseProblem(problem.cases(), problem.shelf(), problem.offers(),
                    problem.rungsPerAxis() + 1, problem.exceptions(), problem.goal());
            Optional<BigDecimal> least = value(problem);
            Optional<BigDecimal> most = value(more);
            assertTrue(most.isEmpty() || least.isPresent() && least.get().compareTo(most.get()) <= 0);
        });
    }

    /** What is taken away from the orders of the best purchase is missed. */
    @Test
    void everyUnitThatIsBoughtIsNeeded() {
        check(60, random -> {
            PurchaseProblem problem = new RandomProblem(random, 5).draw(2, 5, 2);
            if (PurchaseSolver.solve(problem) instanceof Purchase purchase && !purchase.orders().isEmpty()) {
                Purchase.Order order = purchase.orders().get(0);
                Purchase less = new Purchase(List.of(new Purchase.Order(order.item(), order.count() - 1)),
                        order.count() - 1, Optional.empty(), purchase.confirmation(), purchase.allocations());
                assertTrue(!PurchaseCheck.contradictions(problem, less).isEmpty());
            }
        });
    }
}
