/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.ferrule.quantity.Dimension;

/**
 * What was seen on a bench for one pair.
 *
 * @param outer id of the outer device
 * @param lumen name of its lumen; empty when it has only one that matters
 * @param inner id of the inner device
 * @param wire the wire that was in the inner device; absent when not reported
 * @param passed whether it went through
 * @param covers the phases that were tried
 * @param samples how many were tried, 0 when not reported
 * @param source of the report
 */
public record BenchResult(String outer, String lumen, String inner, Optional<Dimension> wire, boolean passed,
        Set<Phase> covers, int samples, SourceRef source) {

    public BenchResult {
        Objects.requireNonNull(outer, "outer");
        Objects.requireNonNull(lumen, "lumen");
        Objects.requireNonNull(inner, "inner");
        Objects.requireNonNull(wire, "wire");
        Objects.requireNonNull(source, "source");
        covers = covers.isEmpty() ? Set.of(Phase.IN) : Set.copyOf(covers);
    }
}
