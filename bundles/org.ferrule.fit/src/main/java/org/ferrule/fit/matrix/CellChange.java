/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Objects;
import java.util.Optional;

/**
 * A cell that is not what it was.
 *
 * @param outerIndex its line in the new matrix
 * @param innerIndex its column in the new matrix
 * @param before the former cell; absent when the pair is new
 * @param after the new cell
 */
public record CellChange(int outerIndex, int innerIndex, Optional<FitCell> before, FitCell after) {

    public CellChange {
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
    }

    /** Whether the verdict going in or coming out is another one. */
    public boolean changesVerdict() {
        return before.isEmpty() || before.get().in().verdict() != after.in().verdict()
                || before.get().out().verdict() != after.out().verdict();
    }
}
