/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Examples with known answers. */
class WorkedExamplesTest {
    private static final Option A = Option.of("A", new Try(2, .5));
    private static final Option B = Option.of("B", new Try(3, .3));
    private static final Option C = Option.of("C", new Try(10, .9));

    static OrderProblem problem(double stop, List<Setup> setups, Option... options) {
        return new OrderProblem(setups, List.of(options), stop, OrderRules.NONE);
    }

    static String ids(OrderedPlan plan) {
        return String.join("", plan.steps().stream().map(Step::id).toList());
    }

    /**
     * The rule of cost per chance as in Unluyurt, Discrete Appl Math 2004;142:189-205 (first in Mitten, J Ind Eng
     * 1960;11:17, and Butterworth, Oper Res 1972;20:335, from memory); the figures of all orders are computed.
     */
    @Test
    void leastCostPerChanceComesFirst() {
        OrderedPlan plan = Orders.solve(problem(1000, List.of(), C, B, A));
        assertEquals("ABC", ids(plan));
        assertEquals(7.00, plan.stepsCost(), 1e-12);
        assertEquals(.965, plan.successChance(), 1e-12);
        assertEquals(7 + .035 * 1000, plan.expectedCost(), 1e-9);
        assertEquals(15, plan.worstCost());
        assertEquals(List.of(1.0, .5, .35), rounded(plan.placements().stream().map(Placement::reach)));
        assertEquals(List.of(4.0, 10.0, 11.111111), rounded(plan.placements().stream().map(Placement::index)));
        assertEquals(List.of(0, 1, 2), plan.placements().stream().map(Placement::block).toList());
        assertTrue(plan.isExact());
        assertEquals(0, plan.gap());
    }

    private static List<Double> rounded(Stream<Double> values) {
        return values.map(value -> Math.round(value * 1e6) / 1e6).toList();
    }

    /** Computed. */
    @ParameterizedTest
    @CsvSource({ "ABC, 7.00", "ACB, 7.15", "BAC, 7.90", "BCA, 10.14", "CAB, 10.35", "CBA, 10.44" })
    void givenOrderCostsWhatItCosts(String order, double cost) {
        List<Option> options = new ArrayList<>();
        for (char id : order.toCharArray()) {
            options.add(id == 'A' ? A : id == 'B' ? B : C);
        }
        OrderProblem problem = problem(1000, List.of(), options.toArray(Option[]::new));
        OrderedPlan given = Conventional.of(problem, Orders.solve(problem)).orElseThrow();
        assertEquals(order, ids(given));
        assertEquals(cost, given.stepsCost(), 1e-9);
        assertEquals(.965, given.successChance(), 1e-12);
        assertEquals(cost - 7, given.gap(), 1e-9);
        assertEquals(order.equals("ABC"), given.isExact());
    }

    /** Orders under precedence: Garey, Discrete Math 1973;4:37 (from memory); the figures are computed. */
    @Test
    void setupCountsWithWhatItEnables() {
        Option y = Option.of("Y", new Try(4, .8)).needing("X");
        Option z = Option.of("Z", new Try(3, .4));
        OrderProblem problem = problem(1000, List.of(Setup.of("X", 1)), z, y);
        OrderedPlan plan = Orders.solve(problem);
        assertEquals("XYZ", ids(plan));
        assertEquals(5.6, plan.stepsCost(), 1e-12);
        assertEquals(List.of(6.25, 6.25, 7.5), rounded(plan.placements().stream().map(Placement::index)));
        assertEquals(List.of(0, 0, 1), plan.placements().stream().map(Placement::block).toList());
        OrderedPlan given = Conventional.of(problem, plan).orElseThrow();
        assertEquals("ZXY", ids(given));
        assertEquals(6.0, given.stepsCost(), 1e-12);
    }

    /** With a chance of nearly nothing the rule is Smith's: weight per time, Nav Res Logist Q 1956;3:59 (from memory). */
    @Test
    void smallChancesGiveSmithsRule() {
        double small = 1e-6;
        OrderedPlan plan = Orders.solve(problem(1e9, List.of(), Option.of("a", new Try(3, small)),
                Option.of("b", new Try(1, 2 * small)), Option.of("c", new Try(4, 6 * small))));
        assertEquals("bca", ids(plan));
        double finished = 0;
        double sum = 0;
        for (Step step : plan.steps()) {
            finished += step.cost();
            sum += step.chance() / small * finished;
        }
        assertEquals(40, sum, 1e-9);
    }

    /** Two tries that share a set-up: it is paid once. Batches of tests as in Ann Oper Res 2016, s10479-016-2345-7. */
    @Test
    void sharedSetupIsPaidOnce() {
        OrderedPlan plan = Orders.solve(problem(20, List.of(Setup.of("X", 5)),
                Option.of("a", new Try(1, .3)).needing("X"), Option.of("b", new Try(1, .2)).needing("X")));
        assertEquals("Xab", ids(plan));
        assertEquals(5 + 1 + .7 + .56 * 20, plan.expectedCost(), 1e-12);
        assertEquals(6.7 / .44, plan.placements().get(0).index(), 1e-12);
    }

    /** A try that costs more per chance than stopping is left out, and so is what only it needs. Computed. */
    @Test
    void stopsWhereNothingIsWorthItAnyMore() {
        assertEquals("AB", ids(Orders.solve(problem(11, List.of(), C, B, A))));
        assertEquals("A", ids(Orders.solve(problem(10, List.of(), C, B, A))));
        OrderedPlan nothing = Orders.solve(problem(4, List.of(Setup.of("X", 1)), A, C.needing("X")));
        assertEquals("", ids(nothing));
        assertEquals(4, nothing.expectedCost());
        assertEquals(0, nothing.successChance());
        assertTrue(nothing.isExact());
    }

    /**
     * Kadane, J. Am. Stat. Assoc. 1968;63:157; Stone, Theory of Optimal Search, 1975 (from memory); figures computed: an
     * option with .8 and .5 a try, a try at 2, against a rival of .15 chance per cost.
     */
    @Test
    void twoModelsOfRepeatedTriesDiffer() {
        RepeatedTries option = new RepeatedTries(.8, .5, 2);
        assertEquals(.2, option.exclusiveIndex(1), 1e-12);
        assertEquals(.1, option.exclusiveIndex(2), 1e-12);
        assertEquals(.2, option.independentIndex(1), 1e-12);
        assertEquals(1 / 6.0, option.independentIndex(2), 1e-12);
        assertEquals(.4 + .2 + .1, option.share(1) + option.share(2) + option.share(3), 1e-12);
        Option rival = Option.of("R", new Try(2, .3));
        OrderedPlan plan = Orders
                .solve(problem(1000, List.of(), rival, Option.of("A", option.tries(2).toArray(Try[]::new))));
        assertEquals("AAR", ids(plan), "in the model of independent options");
    }

    /** Of tries of 2, 3 and 4 units that succeed in half, a quarter and never: 4, 12, and no number of units. */
    @Test
    void indexIsCostPerChance() {
        assertEquals(4, new Try(2, .5).index());
        assertEquals(12, new Try(3, .25).index());
        assertEquals(Double.POSITIVE_INFINITY, new Try(4, 0).index());
        assertEquals(0, new Try(0, .5).index());
    }

    @Test
    void certainOptionThatFailsLeavesNoChance() {
        RepeatedTries certain = new RepeatedTries(1, 1, 2);
        assertEquals(1, certain.chanceAfterFailures(1));
        assertEquals(0, certain.chanceAfterFailures(2));
    }

    /** A cheap second try makes the first one better than its own cost per chance says. Computed. */
    @Test
    void cheapFurtherTryPullsTheFirstForward() {
        Option twice = Option.of("D", new Try(10, .5), new Try(1, .4));
        OrderedPlan plan = Orders.solve(problem(100, List.of(), Option.of("E", new Try(9, .5)), twice));
        assertEquals("DDE", ids(plan));
        assertEquals(10.5 / .7, plan.placements().get(0).index(), 1e-12);
        assertEquals(plan.placements().get(0).index(), plan.placements().get(1).index());
    }

    @Test
    void optionAfterAnotherWaitsForOneFailedTry() {
        Option late = new Option("L", List.of(new Try(1, .5)), Set.of(), Set.of("A"), 0, "", false);
        assertEquals("ALA",
                ids(Orders.solve(problem(100, List.of(), late, Option.of("A", new Try(2, .2), new Try(2, .2))))));
    }

    @Test
    void lowerTierComesFirstWherePossible() {
        Option high = new Option("H", List.of(new Try(1, .9)), Set.of(), Set.of(), 1, "", false);
        OrderProblem problem = new OrderProblem(List.of(), List.of(high, A, C), 11, rules(true, false, 1));
        assertEquals("AH", ids(Orders.solve(problem)), "C is of the lower tier, and not worth it");
        assertEquals("HA", ids(Orders.solve(problem(11, List.of(), high, A, C))));
    }

    @Test
    void lowerTierThatAHigherSetupMakesPossibleComesRightAfter() {
        Setup high = new Setup("S", 1, Set.of(), 1, false);
        Option low = Option.of("L", new Try(9, .5)).needing("S");
        Option other = new Option("H", List.of(new Try(1, .5)), Set.of("S"), Set.of(), 1, "", false);
        OrderProblem problem = new OrderProblem(List.of(high), List.of(other, low), 100, rules(true, false, 1));
        assertEquals("SLH", ids(Orders.solve(problem)));
    }

    @Test
    void afterARiskASafeTryComesBeforeTheNextRisk() {
        Setup risky = new Setup("S", 1, Set.of(), 0, true);
        Option risk = new Option("R", List.of(new Try(1, .9)), Set.of("S"), Set.of(), 0, "", true);
        Option safe = Option.of("A", new Try(2, .2));
        OrderRules careful = rules(false, true, 1);
        assertEquals("SAR", ids(Orders.solve(new OrderProblem(List.of(risky), List.of(risk, safe), 100, careful))));
        assertEquals("", ids(Orders.solve(new OrderProblem(List.of(risky), List.of(risk), 100, careful))));
        assertEquals("SRA", ids(Orders.solve(problem(100, List.of(risky), risk, safe))));
    }

    @Test
    void budgetLeavesOutWhatItDoesNotCover() {
        OrderRules poor = new OrderRules(false, false, 1, OptionalDouble.of(12));
        OrderedPlan plan = Orders.solve(new OrderProblem(List.of(), List.of(A, B, C), 1000, poor));
        assertEquals("AC", ids(plan));
        assertEquals(12, plan.worstCost());
    }

    @Test
    void failedTryTellsAgainstItsAxis() {
        OrderedPlan plan = Orders.solve(new OrderProblem(List.of(), List.of(onAxis("a"), onAxis("b"), onAxis("c")), 100,
                rules(false, false, .5)));
        assertEquals(List.of(.8, .4, .2), plan.steps().stream().map(Step::chance).toList());
        assertEquals(.2 * .6 * .8, 1 - plan.successChance(), 1e-12);
    }

    private static Option onAxis(String id) {
        return new Option(id, List.of(new Try(1, .8)), Set.of(), Set.of(), 0, "support", false);
    }

    /** Pairs of a set-up and what needs it are single tries of both costs; sixteen are more events than are held. */
    @Test
    void moreEventsThanAreHeldLeaveATrueBound() {
        List<Setup> setups = new ArrayList<>();
        List<Option> pairs = new ArrayList<>();
        List<Option> single = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            setups.add(Setup.of("s" + i, 1 + i % 5));
            pairs.add(Option.of("o" + i, new Try(2 + i % 3, .1 + .02 * i)).needing("s" + i));
            single.add(Option.of("o" + i, new Try(3 + i % 5 + i % 3, .1 + .02 * i)));
        }
        double best = Orders.solve(problem(60, List.of(), single.toArray(Option[]::new))).expectedCost();
        OrderedPlan plan = Orders.solve(problem(60, setups, pairs.toArray(Option[]::new)));
        assertTrue(plan.expectedCost() >= best - 1e-9, plan::toString);
        assertTrue(plan.lowerBound() <= best + 1e-9, plan::toString);
        assertTrue(plan.expectedCost() < 1.1 * best, plan::toString);
    }

    static OrderRules rules(boolean tiers, boolean risk, double discount) {
        return new OrderRules(tiers, risk, discount, OptionalDouble.empty());
    }
}
