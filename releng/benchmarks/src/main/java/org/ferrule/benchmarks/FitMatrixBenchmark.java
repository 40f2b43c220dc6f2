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
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long a chart of usual devices takes, all cells with verdicts, clearances, reach and the places that decide, going
 * in and coming out: from nothing, and again after one device has changed. The cells are as many as the square of the
 * devices on either side, so the figures beside each other show how the cost grows.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx512m")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class FitMatrixBenchmark {
    /** Devices on either side. */
    @Param({ "625", "1250", "2500", "5000" })
    private int devices;

    private MatrixQuestion question;
    private MatrixQuestion edited;
    private FitMatrix solved;

    /** Reads the devices, and one of the inner ones anew, as after an edit. */
    @Setup
    public void readDevices() {
        question = UsualQuestion.of(devices, devices);
        List<ReadDevice> inner = new ArrayList<>(question.inner());
        int place = devices / 2;
        inner.set(place, ReadDevice.of(inner.get(place).device(), question.rules()));
        edited = new MatrixQuestion(question.outer(), inner, question.direction(), question.reach(), question.rules(),
                question.solver());
        solved = FitMatrix.solve(question, Progress.SILENT);
    }

    /**
     * Solves the whole chart.
     *
     * @return the matrix
     */
    @Benchmark
    public FitMatrix fromNothing() {
        return FitMatrix.solve(question, Progress.SILENT);
    }

    /**
     * Solves the cells of one device that has changed.
     *
     * @return the matrix
     */
    @Benchmark
    public FitMatrix oneDeviceChanged() {
        return solved.resolve(edited, Progress.SILENT);
    }
}
