/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.benchmarks;

import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;

import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * Tells the processor time of a call, of all threads together, compiler and memory management included. On a machine
 * that others use too it says more than the clock on the wall: {@code -prof org.ferrule.benchmarks.ProcessorTime}.
 */
public final class ProcessorTime implements InternalProfiler {
    private long before;

    @Override
    public String getDescription() {
        return "processor time of a call, all threads together";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        before = processorTime();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(BenchmarkParams benchmark, IterationParams iteration,
            IterationResult result) {
        long operations = Math.max(1, result.getMetadata().getMeasuredOps());
        double micros = (processorTime() - before) / 1e3 / operations;
        return List.of(new ScalarResult("processor", micros, "us/op", AggregationPolicy.AVG));
    }

    private static long processorTime() {
        return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class)
                .getProcessCpuTime();
    }
}
