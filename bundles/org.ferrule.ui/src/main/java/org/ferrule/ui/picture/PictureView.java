/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.picture.Transform;

/**
 * Which part of a picture is seen in a room, in whatever units the room is measured.
 *
 * @param zoom how many times larger than when the whole picture is seen; 1 or more
 * @param centre the place of the picture in the middle of the room; of no account while the whole is seen
 */
record PictureView(double zoom, Point centre) {

    static final PictureView WHOLE = new PictureView(1, new Point(0, 0));

    private static final double CLOSEST = 40;

    boolean isWhole() {
        return zoom <= 1;
    }

    /** How large a millimetre of the picture is. */
    double scale(Picture picture, double width, double height) {
        return zoom * Math.min(width / picture.widthMm(), height / picture.heightMm());
    }

    /** From the millimetres of the picture to the room; the picture never leaves room that it could fill. */
    Transform toRoom(Picture picture, double width, double height) {
        double scale = scale(picture, width, height);
        return Transform.scaling(scale, scale).then(Transform.translation(
                shift(width, scale * picture.widthMm(), scale * centre.xMm()),
                shift(height, scale * picture.heightMm(), scale * centre.yMm())));
    }

    private static double shift(double room, double size, double centre) {
        return size <= room ? (room - size) / 2 : Math.max(room - size, Math.min(0, room / 2 - centre));
    }

    /** Looks closer by a factor; a place of the room keeps what it shows, as far as can be. */
    PictureView zoomed(double factor, Point kept, Picture picture, double width, double height) {
        double next = Math.max(1, Math.min(CLOSEST, zoom * factor));
        Point shown = toRoom(picture, width, height).inverse().apply(kept);
        double scale = new PictureView(next, centre).scale(picture, width, height);
        return new PictureView(next, shown.plus((width / 2 - kept.xMm()) / scale, (height / 2 - kept.yMm()) / scale))
                .settled(picture, width, height);
    }

    /** Moves what is seen to the right and down. */
    PictureView panned(double dx, double dy, Picture picture, double width, double height) {
        double scale = scale(picture, width, height);
        PictureView here = settled(picture, width, height);
        return new PictureView(zoom, here.centre.plus(-dx / scale, -dy / scale)).settled(picture, width, height);
    }

    /** The same view with its centre where it really is. */
    private PictureView settled(Picture picture, double width, double height) {
        return new PictureView(zoom,
                toRoom(picture, width, height).inverse().apply(new Point(width / 2, height / 2)));
    }
}
