/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.Objects;

/**
 * Something in a chart that cannot be answered as it is written.
 *
 * @param place the key that it stands under, of the chart ("outer", "inner", "path", "lesion", "rules", "libraries") or
 *              of its conditions ("direction", "wire", "reach", "inside", "through", "bends")
 * @param message for people
 */
public record ChartProblem(String place, String message) {
    public ChartProblem {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(message, "message");
    }
}
