/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.curve;

import java.util.Objects;

import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/**
 * Where the centres of two curves change places: distal to the station one is larger, proximal to it the other.
 *
 * @param station from the landmark; where it had to be rounded, by less than a third of a nanometre
 * @param larger the number of the curve, 0 or 1, that is the larger one proximal to the station
 * @param distal the figure of each curve just distal to the station
 * @param proximal the figure of each curve just proximal to the station
 */
public record Crossing(Length station, int larger, Pair distal, Pair proximal) {

    /** The figures of both curves at one place. */
    public record Pair(Figure first, Figure second) {

        /** Above zero where the first is larger. */
        int order() {
            return first.centre().compareTo(second.centre());
        }

        /** Whether the intervals have something in common, so that real parts may lie the other way round. */
        public boolean overlaps() {
            return first.low().compareTo(second.high()) <= 0 && second.low().compareTo(first.high()) <= 0;
        }
    }

    public Crossing {
        Objects.requireNonNull(station, "station");
        Objects.requireNonNull(distal, "distal");
        Objects.requireNonNull(proximal, "proximal");
    }

    /** Whether either order may be the other way round within the intervals. */
    public boolean isUncertain() {
        return distal.overlaps() || proximal.overlaps();
    }
}
