/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.picture.Ink;
import org.ferrule.quantity.Length;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PicturePainting;
import org.ferrule.ui.preferences.FigureWords;

/** Paints the handles over a drawing, what is being dragged, and its numbers. */
final class HandlePainter {

    private static final int OPAQUE = 255;
    private static final int SIZE = 9;
    private static final int PADDING = 5;
    private static final int AWAY = 14;

    private final PictureCanvas canvas;
    private final HandleState state;
    private final HandlePlaces places;
    private final HandleWords words;

    HandlePainter(PictureCanvas canvas, HandleState state, HandlePlaces places, FigureWords figures) {
        this.canvas = canvas;
        this.state = state;
        this.places = places;
        this.words = new HandleWords(figures);
    }

    void paint(GC gc) {
        gc.setAntialias(SWT.OFF);
        gc.setAlpha(OPAQUE);
        state.handles().forEach(handle -> square(gc, handle, state.chosen().filter(handle::equals).isPresent()));
        state.chosen().ifPresent(handle -> {
            Length figure = state.moved().orElse(handle.value());
            state.moved().ifPresent(moved -> outline(gc, handle, moved));
            tag(gc, places.of(handle, figure), words.lines(handle, figure));
        });
    }

    private Color accent() {
        return canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION);
    }

    private void square(GC gc, Handle handle, boolean chosen) {
        Point at = places.of(handle, chosen ? state.moved().orElse(handle.value()) : handle.value());
        int half = chosen ? SIZE / 2 + 1 : SIZE / 2;
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(1);
        gc.setBackground(chosen ? accent() : PicturePainting.color(Ink.PAPER));
        gc.setForeground(PicturePainting.color(Ink.TEXT));
        gc.fillRectangle(at.x - half, at.y - half, 2 * half + 1, 2 * half + 1);
        gc.drawRectangle(at.x - half, at.y - half, 2 * half, 2 * half);
    }

    /** Where the border, or the outline, would be. */
    private void outline(GC gc, Handle handle, Length figure) {
        gc.setForeground(accent());
        gc.setLineWidth(2);
        gc.setLineStyle(SWT.LINE_DASH);
        if (handle.spot().isStation()) {
            Point at = places.of(handle, figure);
            gc.drawLine(at.x, canvas.getClientArea().height / 5, at.x, canvas.getClientArea().height * 4 / 5);
        } else {
            for (int side : new int[] { -1, 1 }) {
                Point begin = places.corner(handle, figure, true, side);
                Point end = places.corner(handle, figure, false, side);
                gc.drawLine(begin.x, begin.y, end.x, end.y);
            }
        }
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(1);
    }

    /** A box of lines beside a place, wholly on the canvas. */
    private void tag(GC gc, Point place, List<String> lines) {
        int leading = gc.getFontMetrics().getHeight();
        int width = lines.stream().mapToInt(line -> gc.textExtent(line).x).max().orElse(0) + 2 * PADDING;
        int height = lines.size() * leading + 2 * PADDING;
        Rectangle room = canvas.getClientArea();
        int right = place.x + AWAY;
        int x = Math.max(2, right + width <= room.width ? right : place.x - AWAY - width);
        int below = place.y + AWAY;
        int y = Math.max(2, below + height <= room.height ? below : Math.min(place.y - AWAY, room.height) - height);
        gc.setBackground(PicturePainting.color(Ink.PAPER));
        gc.fillRectangle(x, y, width, height);
        gc.setForeground(accent());
        gc.drawRectangle(x, y, width - 1, height - 1);
        for (int i = 0; i < lines.size(); i++) {
            gc.setForeground(PicturePainting.color(i < 2 ? Ink.TEXT : Ink.MUTED));
            gc.drawText(lines.get(i), x + PADDING, y + PADDING + i * leading, SWT.DRAW_TRANSPARENT);
        }
    }
}
