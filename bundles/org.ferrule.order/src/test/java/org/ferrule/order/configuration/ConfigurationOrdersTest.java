/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.configuration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import org.ferrule.order.OrderException;
import org.ferrule.order.Try;
import org.junit.jupiter.api.Test;

/** Small examples, computed. */
class ConfigurationOrdersTest {
    private static final double NO_WAY = Double.POSITIVE_INFINITY;
    private static final List<String> TWO = List.of("in", "out");
    private static final List<List<Double>> CHANGES = List.of(List.of(0.0, 3.0), List.of(2.0, 0.0));

    private static ConfiguredOption option(String id, double cost, double chance, String... in) {
        return new ConfiguredOption(id, new Try(cost, chance), Set.of(in));
    }

    private static List<String> words(ConfigurationPlan plan) {
        return plan.steps().stream().map(step -> step.option() + " " + step.configuration()).toList();
    }

    /** Cost per chance alone would go out for B and come back for C. */
    @Test
    void staysWhereAChangeIsNotWorthIt() {
        ConfigurationProblem problem = new ConfigurationProblem(TWO, CHANGES,
                List.of(option("A", 1, .5, "in"), option("B", 1, .4, "out"), option("C", 1, .35, "in")), 100);
        ConfigurationPlan plan = ConfigurationOrders.solve(problem);
        assertEquals(List.of("A in", "C in", "B out"), words(plan));
        assertEquals(1 + .5 + .325 * 4 + .195 * 100, plan.expectedCost(), 1e-12);
        assertEquals(.805, plan.successChance(), 1e-12);
        assertEquals(List.of(0.0, 0.0, 3.0), plan.steps().stream().map(ConfigurationPlan.Step::changeCost).toList());
        assertTrue(plan.isExact());
    }

    @Test
    void goesRoundWhereTheDirectWayIsDear() {
        List<List<Double>> changes = List.of(List.of(0.0, 1.0, 9.0), List.of(1.0, 0.0, 1.0), List.of(NO_WAY, 1.0, 0.0));
        ConfigurationPlan plan = ConfigurationOrders.solve(
                new ConfigurationProblem(List.of("a", "b", "c"), changes, List.of(option("A", 1, .5, "c")), 100));
        assertEquals(2, plan.steps().get(0).changeCost());
    }

    @Test
    void stopsAtOnceWhereNothingIsWorthIt() {
        ConfigurationPlan plan = ConfigurationOrders.solve(
                new ConfigurationProblem(TWO, CHANGES, List.of(option("A", 1, .5, "out"), option("B", 9, .1, "in")),
                        8));
        assertTrue(plan.steps().isEmpty());
        assertEquals(8, plan.expectedCost());
        assertEquals(8, plan.lowerBound());
    }

    @Test
    void beyondTheLimitItClaimsNothing() {
        List<ConfiguredOption> many = new ArrayList<>();
        for (int i = 0; i < 21; i++) {
            many.add(option("o" + i, 1 + i % 3, .1, i % 2 == 0 ? "in" : "out"));
        }
        ConfigurationPlan plan = ConfigurationOrders.solve(new ConfigurationProblem(TWO, CHANGES, many, 1000));
        assertFalse(plan.isExact());
        assertEquals(21, plan.steps().size());
        assertEquals("o0 in", words(plan).get(0));
        assertTrue(plan.lowerBound() < plan.expectedCost());
        ConfigurationProblem most = new ConfigurationProblem(TWO, CHANGES, many.subList(0, 10), 1000);
        assertTrue(ConfigurationOrders.solve(most).isExact());
    }

    /** With more configurations than are searched the bound is the cost without changes: 1 + .5 * .9 + .45 * 100. */
    @Test
    void boundIsTheCostOfAnOrderInWhichChangesAreFree() {
        ConfigurationPlan most = ConfigurationOrders.solve(inTheLastOf(16));
        ConfigurationPlan tooMany = ConfigurationOrders.solve(inTheLastOf(17));
        assertTrue(most.isExact());
        assertFalse(tooMany.isExact());
        assertEquals(List.of("A 16", "B 16"), words(tooMany));
        assertEquals(3 + 1 + .5 * .9 + .45 * 100, tooMany.expectedCost(), 1e-9);
        assertEquals(1 + .5 * .9 + .45 * 100, tooMany.lowerBound(), 1e-9);
        assertEquals(tooMany.expectedCost(), most.expectedCost(), 1e-9);
    }

    private static ConfigurationProblem inTheLastOf(int configurations) {
        List<String> names = IntStream.range(0, configurations).mapToObj(Integer::toString).toList();
        List<List<Double>> changes = names.stream()
                .map(from -> names.stream().map(to -> from.equals(to) ? 0.0 : 3.0).toList()).toList();
        String last = names.get(configurations - 1);
        return new ConfigurationProblem(names, changes, List.of(option("B", .9, .1, last), option("A", 1, .5, last)),
                100);
    }

    @Test
    void refusesWhatIsBroken() {
        assertThrows(OrderException.class, () -> new ConfigurationProblem(List.of(), List.of(), List.of(), 1));
        assertThrows(OrderException.class, () -> new ConfigurationProblem(List.of("a", "a"), CHANGES, List.of(), 1));
        assertThrows(OrderException.class, () -> new ConfigurationProblem(List.of("a"), CHANGES, List.of(), 1));
        assertThrows(OrderException.class,
                () -> new ConfigurationProblem(TWO, List.of(List.of(0.0), List.of(0.0)), List.of(), 1));
        assertThrows(OrderException.class,
                () -> new ConfigurationProblem(TWO, List.of(List.of(0.0, -1.0), List.of(0.0, 0.0)), List.of(), 1));
        assertThrows(OrderException.class, () -> new ConfigurationProblem(TWO, CHANGES, List.of(), -1));
        assertThrows(OrderException.class, () -> new ConfigurationProblem(TWO, CHANGES, List.of(), NO_WAY));
        assertThrows(OrderException.class,
                () -> new ConfigurationProblem(TWO, CHANGES, List.of(option("A", 1, .5, "up")), 1));
        assertThrows(OrderException.class, () -> new ConfigurationProblem(TWO, CHANGES,
                List.of(option("A", 1, .5, "in"), option("A", 2, .5, "in")), 1));
    }
}
