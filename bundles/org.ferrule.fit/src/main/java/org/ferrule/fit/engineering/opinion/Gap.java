/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

/**
 * How much room the tightest place leaves, in thirds of a nanometre; negative where something overlaps.
 *
 * @param low surely no more than there is
 * @param high surely no less; the same as {@code low} where the gap is exact
 */
record Gap(double low, double high) {
    static final Gap NOTHING_MEETS = new Gap(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    static Gap exactly(double gap) {
        return new Gap(gap, gap);
    }

    Gap min(Gap other) {
        return new Gap(Math.min(low, other.low), Math.min(high, other.high));
    }
}
