/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

/**
 * What zooming and panning does to what a canvas shows. A canvas enlarges its picture as a whole unless it is given
 * something better, such as a plot that shows less of its axes.
 */
public interface PictureZoom {

    /**
     * Shows more or less.
     *
     * @param factor above 1 to look closer, below 1 to step back
     * @param x the place of the canvas that stays where it is
     * @param y the place of the canvas that stays where it is
     */
    void zoom(double factor, int x, int y);

    /** Moves what is shown by pixels to the right and down. */
    void pan(int dx, int dy);

    /** Shows all there is. */
    void fitAll();

    /** Whether less than all is shown. */
    boolean isZoomed();
}
