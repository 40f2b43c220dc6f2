/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;

import org.ferrule.order.Input.Kind;
import org.junit.jupiter.api.Test;

/** How far figures may move; the ends follow from the index rule and are computed. */
class SensitivityTest {
    private static final Option A = Option.of("A", new Try(2, .5));
    private static final Option B = Option.of("B", new Try(3, .3), new Try(3, .2));
    private final OrderProblem problem = WorkedExamplesTest.problem(30, List.of(), B, A);

    private static InputRange range(OrderProblem problem, Kind kind, String id, int attempt) {
        return new Sensitivity(problem, Orders.solve(problem)).range(new Input(kind, id, attempt));
    }

    @Test
    void chanceMayFallToTheRivalsIndex() {
        InputRange range = range(problem, Kind.TRY_CHANCE, "A", 1);
        assertEquals(.5, range.value());
        assertEquals(.2, range.low().orElseThrow(), 1e-9, "2 / .2 is 3 / .3");
        assertEquals(OptionalDouble.empty(), range.high());
        assertTrue(range.exact());
    }

    @Test
    void costMayRiseToTheRivalsIndex() {
        InputRange range = range(problem, Kind.TRY_COST, "A", 1);
        assertEquals(5, range.high().orElseThrow(), 1e-9);
        assertEquals(OptionalDouble.empty(), range.low());
    }

    @Test
    void stoppingMayFallToTheLastIndexThatIsWorthIt() {
        InputRange range = range(problem, Kind.STOPPING_COST, "", 0);
        assertEquals(15, range.low().orElseThrow(), 1e-9, "3 / .2");
        assertEquals(OptionalDouble.empty(), range.high());
    }

    @Test
    void chancesStayInOrderWithinAnOption() {
        InputRange second = range(problem, Kind.TRY_CHANCE, "B", 2);
        assertEquals(.1, second.low().orElseThrow(), 1e-9, "3 / .1 is the stopping cost");
        assertEquals(OptionalDouble.empty(), second.high(), "not above that of the first try");
        assertEquals(OptionalDouble.empty(), range(problem, Kind.TRY_CHANCE, "B", 1).low());
    }

    @Test
    void leftOutTryComesInWhereItIsWorthIt() {
        OrderProblem dear = WorkedExamplesTest.problem(5, List.of(), B, A);
        assertEquals(.4, range(dear, Kind.TRY_CHANCE, "A", 1).low().orElseThrow(), 1e-9);
        assertEquals(1.5, range(dear, Kind.TRY_COST, "B", 1).low().orElseThrow(), 1e-9);
        assertEquals(OptionalDouble.empty(), range(dear, Kind.TRY_COST, "B", 2).low(),
                "as B is not worth its first try, and both together cost more than 5 a chance");
    }

    @Test
    void setupMayCostWhatItsBlockIsWorth() {
        OrderProblem enabling = WorkedExamplesTest.problem(1000, List.of(Setup.of("X", 1)),
                Option.of("Y", new Try(4, .8)).needing("X"), Option.of("Z", new Try(3, .4)));
        InputRange range = range(enabling, Kind.SETUP_COST, "X", 0);
        assertEquals(2, range.high().orElseThrow(), 1e-9, "(2 + 4) / .8 is 3 / .4");
        assertEquals(OptionalDouble.empty(), range.low());
    }

    @Test
    void tieLeavesNoWay() {
        OrderProblem tie = WorkedExamplesTest.problem(100, List.of(), A, Option.of("D", new Try(4, 1)));
        InputRange range = range(tie, Kind.TRY_COST, "A", 1);
        assertTrue(range.low().orElse(2) == 2 || range.high().orElse(2) == 2, range::toString);
    }

    @Test
    void withTiersTheEndIsFoundByHalving() {
        OrderProblem tiers = new OrderProblem(List.of(), problem.options(), 30,
                WorkedExamplesTest.rules(true, false, 1));
        InputRange range = range(tiers, Kind.TRY_COST, "A", 1);
        assertFalse(range.exact());
        assertEquals(5, range.high().orElseThrow(), 28 / 1000.0);
        assertEquals(OptionalDouble.empty(), range.low());
    }

    @Test
    void everyFigureHasItsRange() {
        List<InputRange> all = new Sensitivity(problem, Orders.solve(problem)).all();
        assertEquals(1 + 2 * 3, all.size());
        assertEquals(Input.of(problem), all.stream().map(InputRange::input).toList());
    }

    @Test
    void refusesFiguresThatAreNotThere() {
        assertThrows(OrderException.class, () -> new Input(Kind.TRY_COST, "A", 2).in(problem));
        assertThrows(OrderException.class, () -> new Input(Kind.SETUP_COST, "A", 0).in(problem));
    }
}
