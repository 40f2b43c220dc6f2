/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;

import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.EnclosingCircle;
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

/** How long it takes to enclose several free discs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class EnclosingCircleBenchmark {

    /** Number of discs. */
    @Param({ "2", "3", "4", "5", "6", "7", "8" })
    public int count;

    private List<Length> diameters;

    /** Makes the discs, each a tenth of a millimetre thicker than the one before. */
    @Setup
    public void makeDiscs() {
        diameters = IntStream.range(0, count).mapToObj(i -> Length.ofMm(0.4 + 0.1 * i)).toList();
    }

    /**
     * Encloses the discs.
     *
     * @return the enclosing circle
     */
    @Benchmark
    public Enclosure enclose() {
        return EnclosingCircle.discs(diameters);
    }
}
