/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;

import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.quantity.Length;
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

/**
 * How long it takes to enclose six discs as they meet in one lumen: two shafts of 1.2 to 2.5 mm and four wires and
 * shafts of 0.2 to 1.5 mm. Each call takes the next of many cases, so that the median is that of the cases.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 4)
public class SixDiscsBenchmark {
    private static final int CASES = 1000;
    private static final int DISCS = 6;

    private final List<List<Length>> cases = new ArrayList<>();
    private int next;

    /** Draws the cases, the same every time. */
    @Setup
    public void drawCases() {
        Random random = new Random(1);
        for (int i = 0; i < CASES; i++) {
            List<Length> diameters = new ArrayList<>();
            for (int disc = 0; disc < DISCS; disc++) {
                double least = disc < 2 ? 1.2 : 0.2;
                diameters.add(Length.ofMm(least + 1.3 * random.nextDouble()));
            }
            cases.add(diameters);
        }
    }

    /**
     * Encloses the discs of the next case.
     *
     * @return the enclosing circle
     */
    @Benchmark
    public Enclosure enclose() {
        next = (next + 1) % CASES;
        return EnclosingCircle.discs(cases.get(next));
    }
}
