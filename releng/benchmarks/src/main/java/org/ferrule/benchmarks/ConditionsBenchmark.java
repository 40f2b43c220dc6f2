/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.benchmarks;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.ReadDevice;
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

/** Charts of usual devices under conditions, solved from nothing on all processors; each passage is asked for by itself. */
@State(Scope.Benchmark)
@Fork(value = 1, jvmArgsAppend = "-Xmx512m")
public class ConditionsBenchmark {

    /** Devices on each side. */
    @Param({ "250", "500" })
    public int side;

    /** Beside one of the devices, or after inflation. */
    @Param({ "inside", "afterInflation" })
    public String condition;

    private MatrixQuestion question;

    /** Reads the devices. */
    @Setup
    public void prepare() {
        MatrixQuestion alone = UsualQuestion.of(side, side, false);
        ReadDevice other = alone.inner().get(side / 2);
        Conditions conditions = condition.equals("inside")
                ? new Conditions(List.of(new Occupant(other, Length.ZERO, false)), Optional.empty(), List.of(), false)
                : new Conditions(List.of(), Optional.empty(), List.of(), true);
        question = new MatrixQuestion(alone.outer(), alone.inner(), alone.direction(), alone.reach(), conditions,
                alone.rules(), alone.solver());
    }

    /**
     * Solves the chart.
     *
     * @return the matrix
     */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    @Warmup(iterations = 3)
    @Measurement(iterations = 5)
    public FitMatrix fromNothing() {
        return FitMatrix.solve(question, Progress.SILENT);
    }
}
