/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.order.Input;
import org.ferrule.order.Input.Kind;
import org.ferrule.order.InputRange;
import org.ferrule.order.OrderProblem;
import org.ferrule.order.Orders;
import org.ferrule.order.Step;
import org.ferrule.plansheet.SamplePlan;
import org.junit.jupiter.api.Test;

class OrderReasonsTest {
    private final Plan plan = SamplePlan.plan();
    private final OrderReasons reasons = OrderReasons.of(plan);

    @Test
    void everyFigureOfWhatWasOrderedIsThere() {
        assertEquals(Input.of(plan.problem()), reasons.ranges().stream().map(InputRange::input).toList());
    }

    @Test
    void aFigureWithinItsRangeKeepsTheOrderAndOneBeyondItDoesNot() {
        for (InputRange range : reasons.ranges()) {
            range.low().ifPresent(low -> {
                assertEquals(steps(plan.problem()), steps(moved(range, low + (range.value() - low) * 0.01)));
                assertChanges(range, low - Math.max(1e-6, (range.value() - low) * 0.01));
            });
            range.high().ifPresent(high -> assertEquals(steps(plan.problem()),
                    steps(moved(range, high - (high - range.value()) * 0.01))));
        }
    }

    /** Halving leaves a thousandth of the way open. */
    private void assertChanges(InputRange range, double beyond) {
        if (range.exact() && beyond >= 0) {
            assertFalse(steps(plan.problem()).equals(steps(moved(range, beyond))), range::toString);
        }
    }

    private OrderProblem moved(InputRange range, double value) {
        return range.input().with(plan.problem(), value);
    }

    private static List<String> steps(OrderProblem problem) {
        return Orders.solve(problem).steps().stream().map(step -> step.id() + step.attempt()).toList();
    }

    @Test
    void aTryHasItsChanceFirstAndThenItsCostAndASetupItsCostAlone() {
        Rung attempt = plan.rungs().stream().filter(rung -> !rung.isSetup()).findFirst().orElseThrow();
        assertEquals(List.of(Kind.TRY_CHANCE, Kind.TRY_COST), kinds(attempt));
        Rung setup = plan.rungs().stream().filter(Rung::isSetup).findFirst().orElseThrow();
        assertEquals(List.of(Kind.SETUP_COST), kinds(setup));
    }

    private List<Kind> kinds(Rung rung) {
        return reasons.of(rung).stream().map(range -> range.input().kind()).toList();
    }

    @Test
    void theNearestChangeIsToldFirst() {
        List<InputRange> nearest = reasons.nearest(3);
        assertEquals(3, nearest.size());
        assertTrue(OrderReasons.share(nearest.get(0)) <= OrderReasons.share(nearest.get(1)));
        reasons.ranges().forEach(
                range -> assertTrue(OrderReasons.share(nearest.get(0)) <= OrderReasons.share(range), range::toString));
    }

    @Test
    void theConventionalOrderTakesTheSameStepsAndNeverGains() {
        GivenUp givenUp = reasons.conventional().orElseThrow();
        assertEquals(plan.order().steps().stream().map(OrderReasonsTest::key).sorted().toList(),
                givenUp.steps().stream().map(OrderReasonsTest::key).sorted().toList());
        assertTrue(givenUp.loss() >= 0);
        assertEquals(givenUp.same(), givenUp.loss() == 0);
    }

    private static String key(Step step) {
        return step.id() + " " + step.attempt();
    }

    /** The time that is spared is what the order was found by, so the two ways to reckon it agree. */
    @Test
    void whatIsGivenUpOfWhatIsSparedIsTheDifferenceOfWhatIsUsed() {
        GivenUp givenUp = reasons.conventional().orElseThrow();
        assertEquals(givenUp.loss(), givenUp.conventional().minutes() - givenUp.planned().minutes(), 1e-9);
        assertEquals(plan.rungs().get(plan.rungs().size() - 1).expected().minutes(),
                plan.used().minutes() + givenUp.planned().minutes(), 1e-9);
    }

    @Test
    void nothingHangsOnAPlanWithoutSteps() {
        OrderReasons none = OrderReasons.of(SamplePlan.plan(Map.of("true-lumen", false)));
        assertEquals(List.of(), none.ranges());
        assertTrue(none.conventional().isEmpty());
    }

    @Test
    void whoDoesNotWantToKnowAnyMoreIsNotKeptWaiting() {
        assertThrows(CancellationException.class, () -> OrderReasons.of(plan, () -> true));
    }
}
