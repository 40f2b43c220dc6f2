/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import static org.ferrule.order.WorkedExamplesTest.ids;
import static org.ferrule.order.WorkedExamplesTest.problem;
import static org.ferrule.order.WorkedExamplesTest.rules;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

import org.junit.jupiter.api.Test;

/** Which steps of an order belong together, and what tiers do to it. Computed. */
class PlacementTest {
    private static final Option A = Option.of("A", new Try(2, .5));
    private static final Option B = Option.of("B", new Try(3, .3));
    private static final Option C = Option.of("C", new Try(10, .9));

    private static List<Integer> blocks(OrderedPlan plan) {
        return plan.placements().stream().map(Placement::block).toList();
    }

    /**
     * In the order BAC the step A is better than B before it, 4 against 10. Where nothing but needs decides, it can only
     * have been placed together with B; where a budget has a say, it stands for itself. Computed.
     */
    @Test
    void stepsBelongTogetherWhereNothingElseExplainsTheirOrder() {
        OrderProblem free = problem(1000, List.of(), B, A, C);
        OrderedPlan given = Conventional.of(free, Orders.solve(free)).orElseThrow();
        assertEquals(List.of(0, 0, 1), blocks(given));
        assertEquals(4.4 / .65, given.placements().get(0).index(), 1e-12);
        OrderRules rich = new OrderRules(false, false, 1, OptionalDouble.of(100));
        OrderProblem limited = new OrderProblem(List.of(), List.of(B, A, C), 1000, rich);
        assertEquals(List.of(0, 1, 2), blocks(Conventional.of(limited, Orders.solve(limited)).orElseThrow()));
    }

    @Test
    void stepsThatAreEquallyGoodStandForThemselves() {
        OrderedPlan plan = Orders.solve(problem(1000, List.of(), A, Option.of("D", new Try(2, .5))));
        assertEquals(List.of(0, 1), blocks(plan));
    }

    /** The lower tier comes first though it costs 18 a chance and not 2; that does not make one step of them. */
    @Test
    void tierDoesNotJoinSteps() {
        Option high = new Option("H", List.of(new Try(1, .5)), Set.of(), Set.of(), 1, "", false);
        OrderedPlan plan = Orders.solve(new OrderProblem(List.of(), List.of(high, Option.of("L", new Try(9, .5))), 100,
                rules(true, false, 1)));
        assertEquals("LH", ids(plan));
        assertEquals(List.of(18.0, 2.0), plan.placements().stream().map(Placement::index).toList());
    }

    /** C alone is the best of the lower tier; A and B before it spoil it, and so let D of the higher one come sooner. */
    @Test
    void tierThatIsPlannedForItselfMayCostMoreInTheEnd() {
        OrderProblem problem = new OrderProblem(List.of(),
                List.of(inTier(1, "A", "", 2, .03), inTier(1, "B", "A", 5, 1), inTier(2, "D", "", 4, .9),
                        inTier(1, "C", "", 13, .7), inTier(2, "E", "B", 5, .9)),
                80, rules(true, false, .1));
        OrderedPlan plan = Orders.solve(problem);
        assertEquals("CDABE", ids(plan));
        OrderedPlan given = Conventional.of(problem, plan).orElseThrow();
        assertEquals("ABDCE", ids(given));
        assertTrue(given.expectedCost() < plan.expectedCost());
    }

    /**
     * X, a new risk, is all that the lower tier can do by itself, since B needs the set-up and must not follow it at once.
     * To begin with the set-up leaves the lower tier for a while, and so lets D of the higher one come first.
     */
    @Test
    void tierThatIsLeftForAWhileMayCostLessInTheEnd() {
        Setup risky = new Setup("s", 7, Set.of(), 1, true);
        Option d = new Option("D", List.of(new Try(1, .6)), Set.of("s"), Set.of(), 2, "", false);
        Option b = new Option("B", List.of(new Try(2, .8)), Set.of("s"), Set.of(), 1, "", true);
        Option x = new Option("X", List.of(new Try(6, .2)), Set.of(), Set.of(), 1, "", true);
        OrderProblem problem = new OrderProblem(List.of(risky), List.of(d, b, x), 87, rules(true, true, 1));
        OrderedPlan plan = Orders.solve(problem);
        assertEquals("XsDB", ids(plan));
        OrderedPlan given = Conventional.of(problem, plan).orElseThrow();
        assertEquals("sDBX", ids(given));
        assertTrue(given.expectedCost() < plan.expectedCost());
    }

    private static Option inTier(int tier, String id, String after, double cost, double chance) {
        return new Option(id, List.of(new Try(cost, chance)), Set.of(), after.isEmpty() ? Set.of() : Set.of(after),
                tier,
                tier == 1 ? "support" : "", false);
    }
}
