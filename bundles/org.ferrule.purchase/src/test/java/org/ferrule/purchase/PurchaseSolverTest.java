/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import static org.ferrule.purchase.Problems.DAY;
import static org.ferrule.purchase.Problems.item;
import static org.ferrule.purchase.Problems.lot;
import static org.ferrule.purchase.Problems.need;
import static org.ferrule.purchase.Problems.offer;
import static org.ferrule.purchase.Problems.planned;
import static org.ferrule.purchase.Problems.problem;
import static org.ferrule.purchase.Problems.rung;
import static org.ferrule.purchase.Problems.shelf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.purchase.Purchase.Order;
import org.ferrule.purchase.Purchase.Confirmation;
import org.ferrule.purchase.Uncoverable.Gap;
import org.junit.jupiter.api.Test;

class PurchaseSolverTest {
    private static final List<Offer> OFFERS = List.of(offer("b", "100.00"), offer("c", "40.50"), offer("d", "30"));

    private static Purchase solved(PurchaseProblem problem) {
        Purchase purchase = assertInstanceOf(Purchase.class, PurchaseSolver.solve(problem));
        assertEquals(List.of(), PurchaseCheck.contradictions(problem, purchase));
        assertEquals(Confirmation.CONFIRMED, purchase.confirmation());
        return purchase;
    }

    private static List<Gap> gaps(PurchaseProblem problem) {
        return assertInstanceOf(Uncoverable.class, PurchaseSolver.solve(problem)).gaps();
    }

    /**
     * Chvatal, Math Oper Res 1979;4:233, from memory: to cover 1 to 4, each alone for 1, 1/2, 1/3, 1/4, or all for 1.1.
     * Taking the cheapest per element first costs 25/12; the best is 1.1. Here in 1/60: 60, 30, 20, 15 or 66.
     */
    @Test
    void findsTheSetCoverThatGreedMisses() {
        Rung one = rung("one by one", "cover", need("1", 1, "1"), need("2", 1, "2"), need("3", 1, "3"),
                need("4", 1, "4"));
        Rung set = rung("set", "cover", need("set", 1, "set"));
        Purchase purchase = solved(problem(Goal.CHEAPEST, 1, shelf(), List.of(offer("1", "60"), offer("2", "30"),
                offer("3", "20"), offer("4", "15"), offer("set", "66")), planned("case", one, set)));
        assertEquals(List.of(new Order("set", 1)), purchase.orders());
        assertEquals(new BigDecimal("66"), purchase.cost().orElseThrow());
        assertEquals(new BigDecimal("125"), solved(problem(Goal.CHEAPEST, 1, shelf(), List.of(offer("1", "60"),
                offer("2", "30"), offer("3", "20"), offer("4", "15")), planned("case", one, set))).cost()
                .orElseThrow());
    }

    @Test
    void buysNothingWhereTheShelfSuffices() {
        Purchase purchase = solved(problem(Goal.CHEAPEST, 1, shelf(item("b", lot("B", 0, 1))), OFFERS,
                planned("case", rung("r", "support", need("n", 1, "b")))));
        assertEquals(List.of(), purchase.orders());
        assertEquals(BigDecimal.ZERO, purchase.cost().orElseThrow());
        assertEquals(List.of(new Allocation("case", "r", "n", "b", Optional.of(lot("B", 0, 1)), 1)),
                purchase.allocations());
    }

    @Test
    void unitsThatExpireBeforeTheCaseAreBoughtAnew() {
        Purchase purchase = solved(problem(Goal.SMALLEST, 1, shelf(item("b", lot("B", -1, 5))), OFFERS,
                planned("case", rung("r", "support", need("n", 2, "b")))));
        assertEquals(List.of(new Order("b", 2)), purchase.orders());
        assertEquals(2, purchase.units());
        assertEquals(new BigDecimal("200.00"), purchase.cost().orElseThrow());
    }

    @Test
    void smallestAndCheapestDiffer() {
        Rung dear = rung("dear", "support", need("n", 1, "b"));
        Rung cheap = rung("cheap", "support", need("n", 1, "c"), need("m", 1, "d"));
        PurchaseCase planned = planned("case", dear, cheap);
        assertEquals(List.of(new Order("b", 1)), solved(problem(Goal.SMALLEST, 1, shelf(), OFFERS, planned)).orders());
        Purchase cheapest = solved(problem(Goal.CHEAPEST, 1, shelf(), OFFERS, planned));
        assertEquals(List.of(new Order("c", 1), new Order("d", 1)), cheapest.orders());
        assertEquals(new BigDecimal("70.50"), cheapest.cost().orElseThrow());
    }

    @Test
    void unitOfOneRungIsNotThereForAnother() {
        PurchaseCase planned = planned("case", rung("r", "support", need("n", 1, "b")),
                rung("s", "support", need("n", 1, "b")));
        assertEquals(List.of(), solved(problem(Goal.SMALLEST, 1, shelf(item("b", lot("B", 5, 1))), OFFERS, planned))
                .orders());
        assertEquals(List.of(new Order("b", 1)),
                solved(problem(Goal.SMALLEST, 2, shelf(item("b", lot("B", 5, 1))), OFFERS, planned)).orders());
    }

    @Test
    void unitOfOneCaseIsNotThereForAnother() {
        PurchaseCase[] cases = { planned("one", rung("r", "support", need("n", 1, "b"))),
            planned("two", rung("r", "support", need("n", 1, "b"))) };
        assertEquals(List.of(new Order("b", 1)),
                solved(problem(Goal.CHEAPEST, 1, shelf(item("b", lot("B", 5, 1))), OFFERS, cases)).orders());
    }

    @Test
    void anotherItemFreesTheOneThatIsNeededElsewhere() {
        PurchaseCase planned = planned("case", rung("r", "support", need("n", 1, "b", "c")),
                rung("s", "support", need("n", 1, "b")));
        Purchase purchase = solved(
                problem(Goal.CHEAPEST, 2, shelf(item("b", lot("B", 5, 1)), item("c", lot("C", 5, 1))),
                        OFFERS, planned));
        assertEquals(List.of(), purchase.orders());
    }

    @Test
    void exceptionsCountForTheirAxis() {
        PurchaseCase planned = planned("case", rung("r", "support", need("n", 1, "b")),
                rung("s", "exit", need("n", 1, "c")));
        PurchaseProblem problem = new PurchaseProblem(List.of(planned), shelf(), OFFERS, 1, Map.of("support", 0),
                Goal.SMALLEST);
        assertEquals(List.of(new Order("c", 1)), solved(problem).orders());
        assertEquals(List.of(), solved(problem(Goal.SMALLEST, 0, shelf(), OFFERS, planned)).orders());
        assertEquals(List.of(), solved(problem(Goal.SMALLEST, 3, shelf(), OFFERS)).orders());
    }

    @Test
    void rungThatNeedsNothingIsReady() {
        assertEquals(0,
                solved(problem(Goal.SMALLEST, 1, shelf(), List.of(), planned("case", rung("r", "exit")))).units());
    }

    @Test
    void smallestNeedsNoPrices() {
        Purchase purchase = solved(problem(Goal.SMALLEST, 1, shelf(), List.of(offer("b", "")),
                planned("case", rung("r", "support", need("n", 3, "b")))));
        assertEquals(Optional.empty(), purchase.cost());
        assertEquals(3, purchase.units());
    }

    @Test
    void whatIsFreeIsNotBoughtInPlenty() {
        Purchase purchase = solved(problem(Goal.CHEAPEST, 1, shelf(), List.of(offer("b", "0.00")),
                planned("case", rung("r", "support", need("n", 2, "b")))));
        assertEquals(List.of(new Order("b", 2)), purchase.orders());
    }

    @Test
    void seesTheLastCent() {
        PurchaseCase planned = planned("case", rung("r", "support", need("n", 7, "b", "c"), need("m", 3, "c", "d")));
        Purchase purchase = solved(problem(Goal.CHEAPEST, 1, shelf(),
                List.of(offer("b", "12345.67"), offer("c", "12345.66"), offer("d", "12345.65")), planned));
        assertEquals(List.of(new Order("c", 7), new Order("d", 3)), purchase.orders());
    }

    @Test
    void claimsNothingOfSumsThatTheSolverDoesNotHold() {
        PurchaseProblem problem = problem(Goal.CHEAPEST, 1, shelf(),
                List.of(offer("b", "99999999.99"), offer("c", "3")),
                planned("case", rung("r", "support", need("n", 1, "b"))));
        Purchase purchase = assertInstanceOf(Purchase.class, PurchaseSolver.solve(problem));
        assertEquals(Confirmation.OPEN, purchase.confirmation());
        assertEquals(new BigDecimal("99999999.99"), purchase.cost().orElseThrow());
    }

    @Test
    void saysWhichCaseAndAxisCannotBeCovered() {
        PurchaseCase planned = planned("case", rung("r", "support", need("n", 1, "b"), need("m", 2, "x", "y")),
                rung("s", "support", need("n", 1, "b")), rung("t", "exit", need("n", 1, "c")));
        assertEquals(List.of(new Gap("case", "exit", 2, 1, true, List.of()),
                new Gap("case", "support", 2, 1, true, List.of("r/m"))),
                gaps(problem(Goal.SMALLEST, 2, shelf(item("x", lot("X", 1, 1)), item("y", lot("Y", -1, 4))), OFFERS,
                        planned)));
    }

    @Test
    void saysWhereCasesTakeEachOthersUnits() {
        PurchaseCase[] cases = { planned("one", rung("r", "support", need("n", 1, "x"))),
            planned("two", rung("r", "support", need("n", 1, "x"))) };
        List<Gap> gaps = gaps(problem(Goal.SMALLEST, 1, shelf(item("x", lot("X", 1, 1))), OFFERS, cases));
        assertEquals(1, gaps.size());
        assertEquals(new Gap(gaps.get(0).plannedCase(), "support", 1, 0, false, List.of()), gaps.get(0));
    }

    @Test
    void offersThatExpireBeforeTheCaseAreNone() {
        PurchaseCase planned = planned("case", rung("r", "support", need("n", 1, "b")));
        Offer early = new Offer("b", Optional.of(BigDecimal.ONE), Optional.of(DAY.minusDays(1)));
        Offer inTime = new Offer("b", Optional.of(BigDecimal.ONE), Optional.of(DAY));
        assertEquals(List.of(new Gap("case", "support", 1, 0, true, List.of("r/n"))),
                gaps(problem(Goal.SMALLEST, 1, shelf(), List.of(early), planned)));
        assertEquals(1, solved(problem(Goal.SMALLEST, 1, shelf(), List.of(inTime), planned)).units());
    }

    @Test
    void withoutTimeNothingIsClaimed() {
        PurchaseCase planned = planned("case", rung("r", "support", need("n", 1, "b")));
        PurchaseAnswer answer = PurchaseSolver.solve(problem(Goal.SMALLEST, 1, shelf(), OFFERS, planned),
                Duration.ZERO);
        assertTrue(answer instanceof Undecided || answer instanceof Purchase purchase
                && PurchaseCheck.contradictions(problem(Goal.SMALLEST, 1, shelf(), OFFERS, planned), purchase)
                        .isEmpty(),
                answer.toString());
    }

    @Test
    void refusesWhatContradictsItself() {
        PurchaseCase planned = planned("case");
        assertThrows(IllegalArgumentException.class,
                () -> problem(Goal.SMALLEST, 1, shelf(), OFFERS, planned, planned));
        assertThrows(IllegalArgumentException.class, () -> problem(Goal.SMALLEST, -1, shelf(), OFFERS, planned));
        assertThrows(IllegalArgumentException.class,
                () -> problem(Goal.SMALLEST, 1, shelf(), List.of(offer("b", ""), offer("b", ""))));
        assertThrows(IllegalArgumentException.class, () -> problem(Goal.CHEAPEST, 1, shelf(), List.of(offer("b", ""))));
        assertThrows(IllegalArgumentException.class, () -> offer("b", "-1"));
        assertThrows(IllegalArgumentException.class, () -> planned("case", rung("r", "a"), rung("r", "b")));
        assertThrows(IllegalArgumentException.class,
                () -> planned("case", rung("r", "a", need("n", 1, "b"), need("n", 1, "c"))));
        assertThrows(IllegalArgumentException.class, () -> PurchaseSolver.solve(problem(Goal.CHEAPEST, 1, shelf(),
                List.of(offer("b", "1000000000000000"), offer("c", "0.01")),
                planned("case", rung("r", "a", need("n", 1, "b", "c"))))));
    }
}
