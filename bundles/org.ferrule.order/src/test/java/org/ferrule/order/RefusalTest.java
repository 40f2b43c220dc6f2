/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Broken problems are refused with the values that are wrong. */
class RefusalTest {
    private static final Try FINE = new Try(1, .5);

    private static void refuses(Executable broken, String... values) {
        String message = assertThrows(OrderException.class, broken).getMessage();
        for (String value : values) {
            assertTrue(message.contains(value), message);
        }
    }

    @Test
    void figuresOutOfRange() {
        refuses(() -> new Try(-1, .5), "-1.0");
        refuses(() -> new Try(Double.NaN, .5), "NaN");
        refuses(() -> new Try(Double.POSITIVE_INFINITY, .5), "Infinity");
        refuses(() -> new Try(1, 1.5), "1.5");
        refuses(() -> new Try(1, -.5), "-0.5");
        refuses(() -> Setup.of("S", -2), "-2.0");
        refuses(() -> problem(-3, List.of(), List.of()), "stopping", "-3.0");
        refuses(() -> WorkedExamplesTest.rules(false, false, 1.1), "1.1");
        refuses(() -> WorkedExamplesTest.rules(false, false, -.1), "-0.1");
        refuses(() -> new OrderRules(false, false, 1, OptionalDouble.of(-4)), "budget", "-4.0");
        refuses(() -> new RepeatedTries(1.2, .5, 1), "1.2");
        refuses(() -> new RepeatedTries(.5, 1.2, 1), "1.2");
        refuses(() -> new RepeatedTries(-.1, .5, 1), "-0.1");
        refuses(() -> new RepeatedTries(.5, -.1, 1), "-0.1");
        refuses(() -> new RepeatedTries(.5, .5, 0), "nothing");
        refuses(() -> new RepeatedTries(.5, .5, -2), "a try", "-2.0");
    }

    @Test
    void noneAndCertaintyAreChances() {
        assertEquals(0, new Try(0, 0).cost());
        assertEquals(1, new Try(1, 1).chance());
        assertEquals(0, new RepeatedTries(0, 1, 1).share(1));
        assertEquals(0, new RepeatedTries(1, 0, 1).share(1));
    }

    @Test
    void chancesThatRise() {
        refuses(() -> Option.of("A", new Try(1, .4), new Try(1, .3), new Try(1, .35)), "A", "0.3", "try 2", "0.35",
                "try 3");
        assertEquals(2, Option.of("A", FINE, FINE).tries().size());
    }

    @Test
    void optionsWithoutTriesOrIds() {
        refuses(() -> Option.of("A"), "A");
        refuses(() -> Option.of(" ", FINE), "id");
        refuses(() -> Setup.of("", 1), "id");
    }

    @Test
    void idsThatAreThereTwiceOrNotAtAll() {
        Option a = Option.of("A", FINE);
        refuses(() -> problem(1, List.of(), List.of(a, a)), "A", "twice");
        refuses(() -> problem(1, List.of(Setup.of("A", 1)), List.of(a)), "A", "twice");
        refuses(() -> problem(1, List.of(Setup.of("S", 1), Setup.of("S", 1)), List.of()), "S", "twice");
        refuses(() -> problem(1, List.of(), List.of(a.needing("S"))), "A", "S", "not there");
        refuses(() -> problem(1, List.of(), List.of(after("B", "C"))), "B", "C", "not there");
    }

    @Test
    void circles() {
        refuses(() -> problem(1, List.of(), List.of(after("A", "B"), after("B", "A"))), "A", "B");
        Setup first = new Setup("S", 1, Set.of("T"), 0, false);
        Setup second = new Setup("T", 1, Set.of("S"), 0, false);
        refuses(() -> problem(1, List.of(first, second, Setup.of("U", 1)), List.of()), "[S, T]");
    }

    @Test
    void moreThanCanBeOrdered() {
        List<Option> many = IntStream.range(0, 64).mapToObj(i -> Option.of("o" + i, FINE)).toList();
        refuses(() -> problem(1, List.of(), many), "63", "64");
        assertEquals(63, Orders.solve(problem(10, List.of(), many.subList(0, 63))).steps().size());
        List<Setup> setups = IntStream.range(0, 64).mapToObj(i -> Setup.of("s" + i, 1)).toList();
        refuses(() -> problem(1, setups, List.of()), "63", "64");
    }

    private static OrderProblem problem(double stop, List<Setup> setups, List<Option> options) {
        return new OrderProblem(setups, options, stop, OrderRules.NONE);
    }

    private static Option after(String id, String other) {
        return new Option(id, List.of(FINE), Set.of(), Set.of(other), 0, "", false);
    }
}
