/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.picture.Box;
import org.ferrule.picture.Element;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Group;
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

    /**
     * What is seen, in the size in which the whole would be seen, cut off where the canvas ends.
     *
     * @param over what is painted over the picture
     */
    Picture seen(Picture picture, List<Element> over) {
        List<Element> elements = new ArrayList<>(picture.elements());
        elements.addAll(over);
        if (!isZoomed()) {
            return new Picture(picture.widthMm(), picture.heightMm(), picture.title(), picture.description(), elements);
        }
        Rectangle room = canvas.getClientArea();
        double pixelsPerMm = PictureView.WHOLE.scale(picture, room.width, room.height);
        Box paper = new Box(0, 0, room.width / pixelsPerMm, room.height / pixelsPerMm);
        Transform toPaper = toScreen(picture).then(Transform.scaling(1 / pixelsPerMm, 1 / pixelsPerMm));
        Group inner = new Group(Frame.PLAIN.withTransform(toPaper), elements);
        return new Picture(paper.widthMm(), paper.heightMm(), picture.title(), picture.description(),
                List.of(new Group(Frame.PLAIN.clippedTo(paper), List.of(inner))));
    }

    /** Another picture is shown as a whole. */
    void forget() {
        view = PictureView.WHOLE;
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
