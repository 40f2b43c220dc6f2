/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.util.List;

import org.ferrule.picture.Box;

/** Reads values off a picture, as it is laid out, at places along its level axis. */
public interface PictureRuler {

    /** The part of the picture in which a cursor may stand. */
    Box area();

    /** The value of the axis at an x of the picture. */
    double valueAt(double xMm);

    /** The x of the picture at a value of the axis. */
    double xMm(double value);

    /**
     * How far a key moves the cursor.
     *
     * @param large whether it is to be the larger step
     */
    double step(boolean large);

    /** What there is to read at a value of the axis, in lines. */
    List<String> read(double value);
}
