/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;

import org.ferrule.picture.Element;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;

/** The cursor of a canvas: put and moved at places of the canvas, which follows it. */
final class CanvasCursor {

    private static final double LEAST_PAN = 40;

    private final PictureCanvas canvas;
    private PictureCursor cursor = new PictureCursor(any -> Optional.empty());

    CanvasCursor(PictureCanvas canvas) {
        this.canvas = canvas;
    }

    /** Reads by other rulers from now on. */
    void readBy(Function<Picture, Optional<PictureRuler>> rulers, Consumer<OptionalDouble> listener) {
        cursor = new PictureCursor(rulers);
        cursor.laid(canvas.picture().orElse(null));
        cursor.onMove(listener);
    }

    /** The picture was laid out anew; null for none. */
    void laid(Picture picture) {
        cursor.laid(picture);
    }

    List<String> reading() {
        return cursor.reading();
    }

    List<Element> elements() {
        return cursor.elements();
    }

    /** Puts it at a value of the axis. */
    void put(double value) {
        cursor.put(OptionalDouble.of(value));
        canvas.redraw();
    }

    /** Puts it at a place of the canvas, if it may stand there. */
    void putAt(int x, int y) {
        if (canvas.shown().filter(shown -> cursor.putAt(shown.toPicture(x, y))).isPresent()) {
            canvas.redraw();
        }
    }

    /** Moves it by steps; what is shown follows when it would leave that. */
    boolean step(int steps, boolean large) {
        boolean moved = cursor.step(steps, large);
        double outside = canvas.shown().map(shown -> cursor.outsideMm() * shown.toScreen().scale()).orElse(0.0);
        if (outside != 0) {
            canvas.zoom().pan((int) -Math.copySign(Math.max(LEAST_PAN, 2 * Math.abs(outside)), outside), 0);
            cursor.keepInside();
        }
        canvas.redraw();
        return moved;
    }

    /** Takes it away. */
    void hide() {
        cursor.put(OptionalDouble.empty());
        canvas.redraw();
    }

    /** Returns where it stands on the canvas. */
    Optional<Integer> x() {
        return cursor.elements().isEmpty() ? Optional.empty()
                : canvas.shown().flatMap(shown -> cursor.xMm().map(x -> shown.toCanvas(new Point(x, 0)).x));
    }
}
