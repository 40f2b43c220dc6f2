/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

/**
 * How a body lies across a drawing.
 *
 * @param yMm of its axis, of the floor that it lies on, or of the ceiling that it lies at
 * @param above the share of its height that lies above that
 */
record Rest(double yMm, double above) {

    static Rest centred(double yMm) {
        return new Rest(yMm, 0.5);
    }

    static Rest onFloor(double yMm) {
        return new Rest(yMm, 1);
    }

    static Rest atCeiling(double yMm) {
        return new Rest(yMm, 0);
    }

    /** The upper edge of a body of a height on paper. */
    double top(double heightMm) {
        return yMm - above * heightMm;
    }

    /** The lower edge of a body of a height on paper. */
    double bottom(double heightMm) {
        return yMm + (1 - above) * heightMm;
    }
}
