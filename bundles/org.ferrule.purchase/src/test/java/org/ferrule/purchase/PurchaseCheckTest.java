/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import static org.ferrule.purchase.Problems.item;
import static org.ferrule.purchase.Problems.lot;
import static org.ferrule.purchase.Problems.need;
import static org.ferrule.purchase.Problems.offer;
import static org.ferrule.purchase.Problems.planned;
import static org.ferrule.purchase.Problems.problem;
import static org.ferrule.purchase.Problems.rung;
import static org.ferrule.purchase.Problems.shelf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.ferrule.purchase.Purchase.Order;
import org.ferrule.purchase.Purchase.Confirmation;
import org.ferrule.shelf.stock.Lot;
import org.junit.jupiter.api.Test;

class PurchaseCheckTest {
    private static final Lot GOOD = lot("G", 0, 2);
    private static final Lot EXPIRED = lot("E", -1, 2);

    private final PurchaseProblem problem = problem(Goal.CHEAPEST, 1, shelf(item("b", GOOD, EXPIRED), item("x", GOOD)),
            List.of(offer("b", "10")), planned("case", rung("r", "support", need("n", 3, "b"))));

    private static Allocation units(Lot lot, int count) {
        return new Allocation("case", "r", "n", "b", Optional.ofNullable(lot), count);
    }

    private static Purchase purchase(int ordered, String cost, Allocation... allocations) {
        return new Purchase(ordered == 0 ? List.of() : List.of(new Order("b", ordered)), ordered,
                Optional.of(new BigDecimal(cost)), Confirmation.CONFIRMED, Arrays.asList(allocations));
    }

    private void assertContradiction(String part, Purchase purchase) {
        List<String> contradictions = PurchaseCheck.contradictions(problem, purchase);
        assertTrue(contradictions.stream().anyMatch(contradiction -> contradiction.startsWith(part)),
                contradictions.toString());
    }

    @Test
    void acceptsWhatCoversAll() {
        assertEquals(List.of(), PurchaseCheck.contradictions(problem,
                purchase(1, "10.00", units(GOOD, 2), units(null, 1))));
        assertEquals(List.of(), PurchaseCheck.contradictions(problem, purchase(3, "30", units(null, 3))));
    }

    @Test
    void seesWhatIsMissing() {
        assertContradiction("0 of 1 rungs", purchase(0, "0", units(GOOD, 2)));
        assertContradiction("0 of 1 rungs", purchase(2, "20", units(GOOD, 2), units(null, 2)));
    }

    @Test
    void seesUnitsThatCannotBeUsed() {
        assertContradiction("cannot be used", purchase(1, "10", units(EXPIRED, 2), units(null, 1)));
        assertContradiction("cannot be used", purchase(0, "0",
                new Allocation("case", "r", "n", "x", Optional.of(GOOD), 2)));
        assertContradiction("cannot be used", purchase(0, "0",
                new Allocation("case", "r", "m", "b", Optional.of(GOOD), 2)));
        assertContradiction("cannot be used", purchase(0, "0",
                new Allocation("other", "r", "n", "b", Optional.of(GOOD), 2)));
        assertContradiction("cannot be used", purchase(3, "30", units(null, 3), units(GOOD, 0)));
    }

    @Test
    void seesUnitsThatAreNotThere() {
        assertContradiction("3 are not there", purchase(0, "0", units(GOOD, 3)));
        assertContradiction("3 are not there", purchase(0, "0", units(GOOD, 1), units(GOOD, 2)));
        assertContradiction("3 are not there", purchase(0, "0", units(lot("other", 0, 3), 3)));
    }

    @Test
    void seesWrongSums() {
        assertContradiction("bought and counted on differ by -1", purchase(2, "20", units(null, 3)));
        assertContradiction("bought and counted on differ by 1", purchase(4, "40", units(null, 3)));
        assertContradiction("cost 30, not 29", purchase(3, "29", units(null, 3)));
        assertContradiction("3 units, not 4",
                new Purchase(List.of(new Order("b", 3)), 4, Optional.empty(), Confirmation.CONFIRMED,
                        List.of(units(null, 3))));
    }
}
