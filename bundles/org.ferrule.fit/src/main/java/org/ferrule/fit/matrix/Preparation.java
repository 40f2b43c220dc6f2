/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.quick.QuickInner;
import org.ferrule.fit.quick.QuickOuter;
import org.ferrule.fit.quick.QuickSolver;

/**
 * How lines and columns are made ready.
 *
 * @param solver that makes them ready
 * @param named ids that a claim or a bench result names; what has one of them is answered like nothing else
 */
record Preparation(QuickSolver solver, Set<String> named) {
    /** Fewer devices are made ready sooner than threads are woken. */
    private static final int WORTH_SHARING = 500;

    static Preparation of(MatrixQuestion question, FitSolver cells) {
        Set<String> named = new HashSet<>();
        Stream.concat(question.outer().stream().map(line -> line.device().device()),
                question.inner().stream().map(ReadDevice::device))
                .forEach(device -> device.claims().forEach(claim -> named.addAll(claim.devices())));
        cells.bench().forEach(result -> named.addAll(List.of(result.outer(), result.inner())));
        return new Preparation(QuickSolver.of(question.terms(), cells, named::contains), named);
    }

    /** Whether a device names only devices of which it was known that they are named. */
    boolean knowsNamesIn(Device device) {
        return device.claims().stream().allMatch(claim -> named.containsAll(claim.devices()));
    }

    Optional<QuickOuter> quick(MatrixLine line) {
        return solver.outer(line.device(), line.lumen());
    }

    Optional<QuickInner> quick(ReadDevice device) {
        return solver.inner(device);
    }

    /** Makes many ready, several at a time. */
    static <T, Q> List<Optional<Q>> all(List<T> things, Function<T, Optional<Q>> quick) {
        return (things.size() >= WORTH_SHARING ? things.parallelStream() : things.stream()).map(quick).toList();
    }
}
