/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

/**
 * The share of the empty lumen's flow that is left at equal pressure drop, over all positions of the devices.
 *
 * @param low what the worst position leaves, rounded down
 * @param high what the best position leaves, rounded up
 * @param exact whether both ends are known extremes; otherwise they are the best that a search has found: inner bounds,
 *        and a position that leaves a little less or more cannot be excluded
 */
public record OpenFraction(double low, double high, boolean exact) {

    /**
     * Checks the ends.
     *
     * @throws IllegalArgumentException unless 0 <= low <= high <= 1
     */
    public OpenFraction {
        if (!(0 <= low && low <= high && high <= 1)) {
            throw new IllegalArgumentException("no interval of shares: " + low + " to " + high);
        }
    }
}
