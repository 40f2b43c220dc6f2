/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.ferrule.order.OrderProblem;
import org.ferrule.order.OrderRules;
import org.ferrule.order.OrderedPlan;
import org.ferrule.order.Orders;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is found is what trying all orders finds. */
class EnumerationLawsTest {

    private static void sameAsEnumeration(OrderProblem problem) {
        OrderedPlan plan = Orders.solve(problem);
        assertTrue(plan.isExact(), () -> "not exact: " + problem);
        assertEquals(new Enumeration(problem).leastCost(), plan.expectedCost(), 1e-7, problem::toString);
    }

    @Test
    void needsAlone() {
        Cases.check(3000, random -> sameAsEnumeration(new RandomProblem(random).problem(3, 4, 2, OrderRules.NONE)));
    }

    @Test
    void anyRules() {
        Cases.check(3000, random -> sameAsEnumeration(anyRules(random)));
    }

    @Test
    void setupsThatExclude() {
        Cases.check(3000, random -> sameAsEnumeration(new RandomProblem(random).excluding(
                new RandomProblem(random).problem(3, 4, 2, OrderRules.NONE))));
        Cases.check(3000, random -> sameAsEnumeration(new RandomProblem(random).excluding(anyRules(random))));
    }

    @Test
    @Tag("slow")
    void largerProblemsWithAnyRules() {
        Cases.check(1500, random -> {
            RandomProblem problems = new RandomProblem(random);
            sameAsEnumeration(problems.problem(4, 5, 3, problems.rules()));
        });
    }

    private static OrderProblem anyRules(Random random) {
        RandomProblem problems = new RandomProblem(random);
        return problems.problem(3, 4, 2, problems.rules());
    }
}
