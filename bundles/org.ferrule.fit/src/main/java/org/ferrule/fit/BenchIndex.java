/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.ferrule.fit.device.BenchResult;

/** Bench results by pair, so that a matrix does not search all of them for every cell. */
record BenchIndex(Map<Pair, List<BenchResult>> results) {

    private record Pair(String outer, String inner) {
    }

    static BenchIndex of(List<BenchResult> results) {
        return new BenchIndex(results.stream().collect(Collectors.groupingBy(r -> new Pair(r.outer(), r.inner()))));
    }

    List<BenchResult> all() {
        return results.values().stream().flatMap(List::stream).toList();
    }

    List<BenchResult> of(String outer, String inner) {
        return results.getOrDefault(new Pair(outer, inner), List.of());
    }
}
