/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.sensitivity;

import java.util.Objects;
import java.util.OptionalInt;

import org.ferrule.fit.engineering.change.Place;

/**
 * How many verdicts of a matrix, going in, rest on one place of the papers.
 *
 * @param place the dimension or the statement
 * @param decides cells that geometry decides at this place, that it leaves unknown because it is missing, or that this
 *                statement decides
 * @param changes cells whose verdict changes when the real part lies at one end of the interval or at the other; of a
 *                statement, when it is taken away. Zero where a figure has no interval
 * @param settles where the spread is only assumed: cells whose verdict changes when measuring finds the part at its
 *                centre
 */
public record Influence(Place place, int decides, int changes, OptionalInt settles) {

    public Influence {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(settles, "settles");
    }

    /** Whether no verdict rests on it. */
    public boolean isNone() {
        return decides == 0 && changes == 0;
    }
}
