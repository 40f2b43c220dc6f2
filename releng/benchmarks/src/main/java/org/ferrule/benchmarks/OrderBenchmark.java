/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;

import org.ferrule.order.OrderProblem;
import org.ferrule.order.OrderRules;
import org.ferrule.order.OrderedPlan;
import org.ferrule.order.Orders;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long it takes to order twenty options of three tries with six set-ups. Each call takes the next of many problems, so
 * that the median is that of the problems. How many were not proved is told at the start.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 2, time = 4)
public class OrderBenchmark {
    private static final int PROBLEMS = 400;

    /** Which rules there are beside what steps need. */
    @Param({ "needs", "tiers", "tiersAndRisks", "budget" })
    public String rules;

    private final List<OrderProblem> problems = new ArrayList<>();
    private int next;

    /** Draws the problems, the same every time. */
    @Setup
    public void drawProblems() {
        RandomLadders ladders = new RandomLadders(1);
        boolean tiers = rules.startsWith("tiers");
        OptionalDouble budget = "budget".equals(rules) ? OptionalDouble.of(60) : OptionalDouble.empty();
        OrderRules asked = new OrderRules(tiers, "tiersAndRisks".equals(rules), 1, budget);
        for (int i = 0; i < PROBLEMS; i++) {
            problems.add(ladders.ladder(asked));
        }
        System.out.println(problems.stream().filter(problem -> !Orders.solve(problem).isExact()).count() + " of "
                + PROBLEMS + " not proved");
    }

    /**
     * Orders the next problem.
     *
     * @return the plan
     */
    @Benchmark
    public OrderedPlan order() {
        next = (next + 1) % PROBLEMS;
        return Orders.solve(problems.get(next));
    }
}
