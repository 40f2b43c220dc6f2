/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.picture.Box;
import org.ferrule.picture.Group;
import org.ferrule.picture.Path;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.picture.Transform;

/**
 * A picture as it lies on a canvas.
 *
 * @param picture the picture
 * @param toScreen from millimetres of the picture to points of the canvas
 */
record ShownPicture(Picture picture, Transform toScreen) {

    private static final double NEAR_PIXELS = 3;

    /** The groups with a name or a tooltip at a place of the canvas, innermost first. */
    List<Group> groupsAt(int x, int y) {
        return picture.groupsAt(toPicture(x, y), NEAR_PIXELS / toScreen.scale());
    }

    /** The place of the picture at a place of the canvas, in millimetres. */
    Point toPicture(int x, int y) {
        return toScreen.inverse().apply(new Point(x, y));
    }

    /** Where on the canvas the groups with the name lie. */
    Optional<Rectangle> boundsOf(String id) {
        return Highlight.outlines(picture, id, toScreen).stream().map(Path::bounds).reduce(Box::union)
                .map(box -> new Rectangle((int) Math.floor(box.xMm()), (int) Math.floor(box.yMm()),
                        (int) Math.ceil(box.widthMm()), (int) Math.ceil(box.heightMm())));
    }

    /** Where on the canvas a place of the picture is shown. */
    org.eclipse.swt.graphics.Point toCanvas(Point place) {
        Point shown = toScreen.apply(place);
        return new org.eclipse.swt.graphics.Point((int) Math.round(shown.xMm()), (int) Math.round(shown.yMm()));
    }
}
