/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.ferrule.order.configuration.ConfigurationOrders;
import org.ferrule.order.configuration.ConfigurationPlan;
import org.ferrule.order.configuration.ConfigurationProblem;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long it takes to order twenty options among sixteen configurations; each call takes the next of many problems. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1, time = 3)
@Measurement(iterations = 2, time = 8)
public class ConfigurationBenchmark {
    private static final int PROBLEMS = 40;

    private final List<ConfigurationProblem> problems = new ArrayList<>();
    private int next;

    /** Draws the problems, the same every time. */
    @Setup
    public void drawProblems() {
        RandomLadders ladders = new RandomLadders(2);
        for (int i = 0; i < PROBLEMS; i++) {
            problems.add(ladders.configurations());
        }
    }

    /**
     * Orders the next problem.
     *
     * @return the plan
     */
    @Benchmark
    public ConfigurationPlan order() {
        next = (next + 1) % PROBLEMS;
        return ConfigurationOrders.solve(problems.get(next));
    }
}
