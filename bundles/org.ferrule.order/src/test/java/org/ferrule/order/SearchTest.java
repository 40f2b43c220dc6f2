/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.ferrule.order.laws.Cases;
import org.ferrule.order.laws.Enumeration;
import org.ferrule.order.laws.RandomProblem;
import org.junit.jupiter.api.Test;

/** The search against all orders of some small problems, and how much it looks at. */
class SearchTest {

    private static Search.Found best(OrderProblem problem, long work) {
        return new Search(new Model(problem), work).best();
    }

    @Test
    void findsWhatTryingAllOrdersFinds() {
        Cases.check(60, random -> {
            RandomProblem problems = new RandomProblem(random);
            OrderProblem problem = problems.problem(3, 4, 2, problems.rules());
            Search.Found found = best(problem, 100_000);
            assertEquals(new Enumeration(problem).leastCost(), found.upper(), 1e-7, problem::toString);
            assertEquals(found.upper(), found.lower());
            assertEquals(found.upper(), Orders.solve(problem).expectedCost(), 1e-9);
        });
    }

    /** Twenty options and six set-ups have some sixty steps, and in each state some thirty ways on at most. */
    @Test
    void needsAloneAreSolvedWithoutSearching() {
        Cases.check(20, random -> {
            OrderProblem problem = new RandomProblem(random).problem(6, 20, 3, OrderRules.NONE);
            Search.Found found = best(problem, 66 * 30);
            boolean held = new Relaxation(new Model(problem), 0, new double[0]).isComplete();
            assertTrue(!held || found.lower() == found.upper(), problem::toString);
        });
    }

    @Test
    void tiersTakeLittleSearching() {
        Cases.check(20, random -> {
            OrderProblem problem = new RandomProblem(random).problem(4, 12, 3,
                    WorkedExamplesTest.rules(true, false, 1));
            Search.Found found = best(problem, 20_000);
            boolean held = new Relaxation(new Model(problem), 0, new double[0]).isComplete();
            assertTrue(!held || found.lower() == found.upper(), problem::toString);
        });
    }

    @Test
    void tooLittleWorkLeavesAPlanAndATrueBound() {
        Cases.check(60, random -> {
            RandomProblem problems = new RandomProblem(random);
            OrderRules rules = problems.rules();
            OrderProblem problem = problems.problem(3, 4, 2,
                    new OrderRules(false, rules.oneNewRiskAStep(), rules.sameAxisDiscount(), rules.budget()));
            Search.Found found = best(problem, random.nextInt(20));
            double least = new Enumeration(problem).leastCost();
            assertTrue(found.lower() <= least + 1e-9, problem::toString);
            assertTrue(found.upper() >= least - 1e-9, problem::toString);
            assertEquals(found.upper(), cost(problem, found), 1e-9, problem::toString);
        });
    }

    private static double cost(OrderProblem problem, Search.Found found) {
        Model model = new Model(problem);
        Moves moves = new Moves(model);
        State state = State.start(model);
        List<Step> steps = new ArrayList<>();
        for (int move : found.moves()) {
            assertTrue(moves.isAllowed(state, move));
            steps.add(moves.step(state, move));
            state = moves.after(state, move);
        }
        return Plans.cost(problem, steps);
    }

    @Test
    void greedyPlanIsAGoodOne() {
        OrderProblem problem = new RandomProblem(new Random(7)).problem(1, 20, 3, OrderRules.NONE);
        Search.Found greedy = best(problem, 0);
        assertEquals(best(problem, 10_000).upper(), greedy.upper(), 1e-9, "by index, where needs alone decide");
    }

    @Test
    void usualOrderPutsNestedSetupsBeforeWhatNeedsThem() {
        Setup first = Setup.of("S", 1);
        Setup second = new Setup("T", 1, Set.of("S"), 0, false);
        Setup other = Setup.of("U", 1);
        OrderProblem problem = WorkedExamplesTest.problem(100, List.of(second, other, first),
                Option.of("B", new Try(9, .5)).needing("T"), Option.of("A", new Try(1, .5), new Try(1, .4)),
                Option.of("C", new Try(5, .5)).needing("U"));
        OrderedPlan plan = Orders.solve(problem);
        assertEquals("AAUCSTB", WorkedExamplesTest.ids(plan));
        OrderedPlan given = Conventional.of(problem, plan).orElseThrow();
        assertEquals("STBAAUC", WorkedExamplesTest.ids(given));
        assertEquals(11 + .5 * 1 + .25 * 1 + .15 * 6, given.stepsCost(), 1e-12);
    }

    @Test
    void usualOrderKeepsTiersAndRisks() {
        Option high = new Option("H", List.of(new Try(1, .9)), Set.of(), Set.of(), 1, "", false);
        Option low = Option.of("L", new Try(2, .5));
        OrderProblem tiers = new OrderProblem(List.of(), List.of(high, low), 100,
                WorkedExamplesTest.rules(true, false, 1));
        assertEquals("LH", WorkedExamplesTest.ids(Conventional.of(tiers, Orders.solve(tiers)).orElseThrow()));
        Setup risky = new Setup("S", 1, Set.of(), 0, true);
        Option risk = new Option("R", List.of(new Try(1, .9)), Set.of("S"), Set.of(), 0, "", true);
        OrderProblem risks = new OrderProblem(List.of(risky), List.of(risk, low), 100,
                WorkedExamplesTest.rules(false, true, 1));
        assertEquals("SLR", WorkedExamplesTest.ids(Conventional.of(risks, Orders.solve(risks)).orElseThrow()));
    }
}
