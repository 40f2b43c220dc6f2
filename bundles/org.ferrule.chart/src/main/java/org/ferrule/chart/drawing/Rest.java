/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

/**
 * How a body lies across a drawing.
 *
 * @param yMm of its axis, or of the floor that it lies on
 * @param onFloor whether it lies on a floor
 */
record Rest(double yMm, boolean onFloor) {

    static Rest centred(double yMm) {
        return new Rest(yMm, false);
    }

    static Rest onFloor(double yMm) {
        return new Rest(yMm, true);
    }

    /** The upper edge of a body of a height on paper. */
    double top(double heightMm) {
        return onFloor ? yMm - heightMm : yMm - heightMm / 2;
    }

    /** The lower edge of a body of a height on paper. */
    double bottom(double heightMm) {
        return onFloor ? yMm : yMm + heightMm / 2;
    }
}
