/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import org.ferrule.picture.Box;

/**
 * Where values lie on the paper: along to the right, across upwards, both linear.
 *
 * @param box of the plot on the paper
 * @param left the value at its left edge
 * @param right the value at its right edge, above {@code left}
 * @param bottom the value at its lower edge
 * @param top the value at its upper edge, above {@code bottom}
 */
public record PlotArea(Box box, double left, double right, double bottom, double top) {

    public PlotArea {
        boolean ordered = right > left && top > bottom;
        if (!ordered) {
            throw new IllegalArgumentException("nothing to plot from " + left + " to " + right + " and from " + bottom
                    + " to " + top);
        }
    }

    /** Where a value along lies on the paper; may be outside the box. */
    public double x(double along) {
        return box.xMm() + (along - left) / (right - left) * box.widthMm();
    }

    /** Where a value across lies on the paper; may be outside the box. */
    public double y(double across) {
        return box.bottomMm() - (across - bottom) / (top - bottom) * box.heightMm();
    }

    /** The value along at a place on the paper. */
    public double along(double xMm) {
        return left + (xMm - box.xMm()) / box.widthMm() * (right - left);
    }

    /** The value across at a place on the paper. */
    public double across(double yMm) {
        return bottom + (box.bottomMm() - yMm) / box.heightMm() * (top - bottom);
    }

    /** Whether a value along is in sight. */
    public boolean shows(double along) {
        return along >= left && along <= right;
    }
}
