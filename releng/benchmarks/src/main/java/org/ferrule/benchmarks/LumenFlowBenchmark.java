/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;

import org.ferrule.flow.LumenFlow;
import org.ferrule.flow.OpenFraction;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.quantity.Length;
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

/** How long it takes to find the flow that is left beside several discs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LumenFlowBenchmark {

    private static final Length LUMEN = Length.ofMm(1.778);

    /** Number of discs. */
    @Param({ "1", "2", "3" })
    public int count;

    private List<Length> diameters;
    private List<PlacedDisc> discs;

    /** Makes the discs, each a tenth of a millimetre thicker than the one before, and packs them about the centre. */
    @Setup
    public void makeDiscs() {
        diameters = IntStream.range(0, count).mapToObj(i -> Length.ofMm(0.4 + 0.1 * i)).toList();
        discs = EnclosingCircle.discs(diameters).discs();
    }

    /**
     * Solves one arrangement, in which the discs touch each other.
     *
     * @return the share
     */
    @Benchmark
    public double arrangement() {
        return LumenFlow.at(LUMEN, discs);
    }

    /**
     * Searches all positions.
     *
     * @return the interval
     */
    @Benchmark
    public OpenFraction positions() {
        return LumenFlow.interval(LUMEN, diameters);
    }
}
