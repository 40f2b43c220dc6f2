/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.Objects;

import org.ferrule.quantity.Length;

/**
 * A radiopaque marker band on a shaft.
 *
 * @param at station of its middle, from the distal tip
 * @param width along the shaft; zero when it is not stated
 */
public record MarkerBand(Length at, Length width) {

    public MarkerBand {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(width, "width");
    }
}
