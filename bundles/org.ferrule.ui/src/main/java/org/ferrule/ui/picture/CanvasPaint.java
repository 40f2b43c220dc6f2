/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Canvas;
import org.ferrule.picture.Element;
import org.ferrule.picture.Ink;

/** Paints a canvas: its ground, a picture with what is emphasized in it or some words, and the keyboard's frame. */
final class CanvasPaint {

    private static final int MARGIN = 12;

    private final Canvas canvas;
    private final TextFonts fonts;
    private final Highlight highlight;

    CanvasPaint(Canvas canvas, TextFonts fonts, Highlight highlight) {
        this.canvas = canvas;
        this.fonts = fonts;
        this.highlight = highlight;
    }

    /** Paints a picture, and above it what belongs to the cursor. */
    void picture(GC gc, ShownPicture shown, List<Element> above) {
        ground(gc);
        new GcPainter(gc, fonts, shown.toScreen()).paint(shown.picture().elements());
        highlight.paint(gc, shown.picture(), shown.toScreen());
        new GcPainter(gc, fonts, shown.toScreen()).paint(above);
        focus(gc);
    }

    /** Paints words in the middle, in lines as long as there is room for. */
    void words(GC gc, String message) {
        ground(gc);
        Rectangle room = canvas.getClientArea();
        TextLayout lines = new TextLayout(canvas.getDisplay());
        lines.setFont(gc.getFont());
        lines.setText(message);
        lines.setAlignment(SWT.CENTER);
        lines.setWidth(Math.max(1, room.width - 2 * MARGIN));
        gc.setForeground(ScreenInks.color(Ink.MUTED));
        lines.draw(gc, MARGIN, Math.max(0, (room.height - lines.getBounds().height) / 2));
        lines.dispose();
        focus(gc);
    }

    private void ground(GC gc) {
        gc.setBackground(ScreenInks.color(Ink.PAPER));
        gc.fillRectangle(canvas.getClientArea());
    }

    private void focus(GC gc) {
        if (canvas.isFocusControl()) {
            Rectangle room = canvas.getClientArea();
            gc.setForeground(canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION));
            gc.setLineWidth(1);
            gc.setLineStyle(SWT.LINE_SOLID);
            gc.drawRectangle(0, 0, room.width - 1, room.height - 1);
        }
    }
}
