/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.Optional;

import org.ferrule.fit.verdict.Lane;

/** Which clearance the cells of a chart show. */
public enum ShownNumber {
    /** In the worst case. */
    WORST(Lane.WORST),
    /** Nominal. */
    NOMINAL(Lane.NOMINAL),
    /** None. */
    NONE(null);

    private final Lane lane;

    ShownNumber(Lane lane) {
        this.lane = lane;
    }

    /** The lane whose clearance is shown; empty for none. */
    public Optional<Lane> lane() {
        return Optional.ofNullable(lane);
    }
}
