/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.concurrent.TimeUnit;

import org.ferrule.quantity.Dimension;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long it takes to read one printed figure. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class QuantityBenchmark {

    /** A figure as printed. */
    @Param({ "2.6 Fr max", "1.02 mm ±0.03", "0.070 in (1.78 mm)", "1.015 mm sd 0.008 n 12" })
    public String text;

    /**
     * Reads the figure.
     *
     * @return the figure
     */
    @Benchmark
    public Dimension parse() {
        return Dimension.parse(text);
    }
}
