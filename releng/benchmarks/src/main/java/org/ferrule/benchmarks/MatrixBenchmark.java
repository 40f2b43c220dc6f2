/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.passage.ReadDevice;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Charts of usual devices: solved from nothing, on all processors that there are, and again after one device has changed;
 * in half a gigabyte.
 */
@State(Scope.Benchmark)
@Fork(value = 1, jvmArgsAppend = "-Xmx512m")
public class MatrixBenchmark {

    /** Devices on each side. */
    @Param({ "625", "1250", "2500", "5000" })
    public int side;

    /** Whether sizes are those few that catalogues print, so that devices are often alike, or every device its own. */
    @Param({ "usual", "different" })
    public String devices;

    private MatrixQuestion question;
    private MatrixQuestion next;
    private FitMatrix matrix;

    /** Reads the devices, and one of them with another figure. */
    @Setup
    public void prepare() {
        boolean areDifferent = devices.equals("different");
        question = UsualQuestion.of(side, side, areDifferent);
        List<ReadDevice> columns = new ArrayList<>(question.inner());
        int place = side / 2;
        columns.set(place, ReadDevice.of(new UsualDevices(2, areDifferent).inner(place + 1).get(place),
                question.rules()));
        next = new MatrixQuestion(question.outer(), columns, question.direction(), question.reach(),
                question.rules(), question.solver());
        matrix = FitMatrix.solve(question, Progress.SILENT);
    }

    /** Lets go of the matrix before another one as large is made. */
    @TearDown(Level.Iteration)
    public void letGo() {
        System.gc();
    }

    /** Tells how much memory a matrix takes that stays. */
    @TearDown
    public void tellMemory() {
        long with = used();
        int cells = matrix.counts().values().stream().mapToInt(i -> i).sum();
        matrix = null;
        long without = used();
        System.out.printf("%n%d cells take %.1f MB, %.2f bytes a cell; with devices and all else %.1f MB%n", cells,
                (with - without) / 1e6, (double) (with - without) / cells, with / 1e6);
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    /**
     * Solves a chart of which nothing is known.
     *
     * @return the matrix
     */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    @Warmup(iterations = 10)
    @Measurement(iterations = 10)
    public FitMatrix fromNothing() {
        matrix = null;
        matrix = FitMatrix.solve(question, Progress.SILENT);
        return matrix;
    }

    /**
     * Solves a chart again after one device has changed.
     *
     * @return the matrix
     */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    @Warmup(iterations = 5, time = 1)
    @Measurement(iterations = 5, time = 1)
    public FitMatrix oneDeviceChanged() {
        return matrix.resolve(next, Progress.SILENT);
    }
}
