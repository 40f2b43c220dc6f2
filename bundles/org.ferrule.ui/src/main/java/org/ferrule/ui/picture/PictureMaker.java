/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import org.ferrule.picture.Picture;

/** Lays a picture out for the room that there is. */
@FunctionalInterface
public interface PictureMaker {

    /**
     * Returns the picture.
     *
     * @param widthMm the width of the room, greater than 0
     * @param heightMm the height of the room, greater than 0
     */
    Picture make(double widthMm, double heightMm);
}
