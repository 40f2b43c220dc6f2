/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

/** Three steps that use minutes and contrast; figures computed. */
class UsageTest {
    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;
    private final OrderedPlan plan = Orders.solve(WorkedExamplesTest.problem(1000, List.of(),
            Option.of("A", new Try(2, .5)), Option.of("B", new Try(3, .3)), Option.of("C", new Try(10, .9))));
    private final Usage usage = Usage.of(plan, step -> List.of(step.cost(), 5.0));

    @Test
    void sumsRunOverTheSteps() {
        assertEquals(List.of(2.0, 5.0), usage.lines().get(0).expected());
        assertEquals(List.of(3.5, 7.5), usage.lines().get(1).expected());
        assertEquals(7.0, usage.lines().get(2).expected().get(0), 1e-12);
        assertEquals(List.of(15.0, 15.0), usage.lines().get(2).worst());
        assertEquals(.35, usage.lines().get(2).reach(), 1e-12);
        assertEquals("C", usage.lines().get(2).step().id());
    }

    @Test
    void firstStepBeyondABudget() {
        assertEquals(Optional.empty(), usage.beyond(List.of(15.0, 15.0)));
        assertEquals(Optional.of(new Usage.Beyond(2, 0)), usage.beyond(List.of(14.9, NO_LIMIT)));
        assertEquals(Optional.of(new Usage.Beyond(1, 1)), usage.beyond(List.of(14.9, 9.0)));
        assertEquals(Optional.of(new Usage.Beyond(0, 0)), usage.beyond(List.of(0.0, 0.0)));
    }

    @Test
    void emptyPlanUsesNothing() {
        OrderedPlan nothing = Orders.solve(WorkedExamplesTest.problem(0, List.of()));
        assertTrue(Usage.of(nothing, step -> List.of(1.0)).lines().isEmpty());
    }

    @Test
    void refusesAmountsThatDoNotMatch() {
        assertThrows(OrderException.class, () -> usage.beyond(List.of(1.0)));
        assertThrows(OrderException.class, () -> Usage.of(plan, step -> List.of(-1.0)));
        assertThrows(OrderException.class,
                () -> Usage.of(plan, step -> step.id().equals("A") ? List.of(1.0) : List.of(1.0, 2.0)));
    }
}
