/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.Objects;
import java.util.Optional;

/**
 * Something in a chart that cannot be answered as it is written.
 *
 * @param place the key that it stands under, of the chart ("outer", "inner", "path", "lesion", "rules", "libraries") or
 *              of its conditions ("direction", "wire", "reach", "inside", "through", "bends")
 * @param part of what stands there, where it is about one part only
 * @param message for people
 */
public record ChartProblem(String place, Optional<Part> part, String message) {

    /**
     * A part of what stands under a key.
     *
     * @param index from 0, where several stand there
     * @param key of that part, such as "radius" of a bend
     */
    public record Part(int index, String key) {
        public Part {
            Objects.checkIndex(index, Integer.MAX_VALUE);
            Objects.requireNonNull(key, "key");
        }
    }

    public ChartProblem {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(message, "message");
    }

    /** A problem of all that stands under a key. */
    public ChartProblem(String place, String message) {
        this(place, Optional.empty(), message);
    }

    /** A problem of one part of what stands under a key. */
    public ChartProblem(String place, int index, String key, String message) {
        this(place, Optional.of(new Part(index, key)), message);
    }
}
