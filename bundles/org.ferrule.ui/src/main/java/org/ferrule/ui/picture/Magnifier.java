/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.picture.Transform;

/** Enlarges the picture of a canvas as a whole. */
final class Magnifier implements PictureZoom {

    private final PictureCanvas canvas;
    private PictureView view = PictureView.WHOLE;

    Magnifier(PictureCanvas canvas) {
        this.canvas = canvas;
    }

    /** From the millimetres of the picture to the pixels of the canvas. */
    Transform toScreen(Picture picture) {
        Rectangle room = canvas.getClientArea();
        return view.toRoom(picture, room.width, room.height);
    }

    /** How many pixels a millimetre of the picture has while the whole is seen. */
    double wholeScale(Picture picture) {
        Rectangle room = canvas.getClientArea();
        return PictureView.WHOLE.scale(picture, room.width, room.height);
    }

    @Override
    public void zoom(double factor, int x, int y) {
        canvas.picture().ifPresent(picture -> {
            Rectangle room = canvas.getClientArea();
            change(view.zoomed(factor, new Point(x, y), picture, room.width, room.height));
        });
    }

    @Override
    public void pan(int dx, int dy) {
        canvas.picture().ifPresent(picture -> {
            Rectangle room = canvas.getClientArea();
            change(view.panned(dx, dy, picture, room.width, room.height));
        });
    }

    @Override
    public void fitAll() {
        change(PictureView.WHOLE);
    }

    @Override
    public boolean isZoomed() {
        return !view.isWhole();
    }

    private void change(PictureView next) {
        view = next.isWhole() ? PictureView.WHOLE : next;
        canvas.refresh();
    }
}
