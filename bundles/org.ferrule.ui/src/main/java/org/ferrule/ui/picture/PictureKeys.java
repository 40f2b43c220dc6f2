/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;

/**
 * Zooms, pans and moves the cursor of a canvas by keys and mouse: plus, minus and 0, the arrows, the wheel with Ctrl,
 * dragging.
 */
final class PictureKeys {

    static final double FACTOR = 1.25;

    private static final int DRAG_PIXELS = 4;
    private static final int PAN_PIXELS = 40;

    private final PictureCanvas canvas;
    private Point pressed;
    private Point dragged;

    PictureKeys(PictureCanvas canvas) {
        this.canvas = canvas;
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, PictureKeys::traverse);
        canvas.addListener(SWT.MouseVerticalWheel, this::wheel);
        canvas.addListener(SWT.MouseDown, this::press);
        canvas.addListener(SWT.MouseMove, this::drag);
        canvas.addListener(SWT.MouseUp, this::release);
    }

    /** A control that listens to keys keeps them all unless it says otherwise. */
    private static void traverse(Event event) {
        event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
    }

    private void key(Event event) {
        if (canvas.leaves(event)) {
            return;
        }
        boolean control = (event.stateMask & SWT.MOD1) != 0;
        boolean shift = (event.stateMask & SWT.SHIFT) != 0;
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> level(1, control, shift);
            case SWT.ARROW_RIGHT -> level(-1, control, shift);
            case SWT.ARROW_UP -> canvas.zoom().pan(0, PAN_PIXELS);
            case SWT.ARROW_DOWN -> canvas.zoom().pan(0, -PAN_PIXELS);
            case SWT.KEYPAD_ADD -> zoom(FACTOR);
            case SWT.KEYPAD_SUBTRACT -> zoom(1 / FACTOR);
            case SWT.KEYPAD_0 -> canvas.zoom().fitAll();
            case SWT.ESC -> canvas.cursor().hide();
            default -> letter(event.character == 0 ? (char) event.keyCode : event.character);
        }
    }

    private void letter(char letter) {
        switch (letter) {
            case '+', '=' -> zoom(FACTOR);
            case '-' -> zoom(1 / FACTOR);
            case '0' -> canvas.zoom().fitAll();
            default -> {
                // not ours
            }
        }
    }

    /** With Ctrl, or where there is no cursor to move, what is shown moves. */
    private void level(int direction, boolean control, boolean shift) {
        if (control || !canvas.cursor().step(-direction, shift)) {
            canvas.zoom().pan(direction * PAN_PIXELS, 0);
        }
    }

    /** Zooms about the cursor, or else the middle. */
    void zoom(double factor) {
        Rectangle room = canvas.getClientArea();
        canvas.zoom().zoom(factor, canvas.cursor().x().orElse(room.width / 2), room.height / 2);
    }

    private void wheel(Event event) {
        if ((event.stateMask & SWT.MOD1) != 0) {
            canvas.zoom().zoom(event.count > 0 ? FACTOR : 1 / FACTOR, event.x, event.y);
            event.doit = false;
        }
    }

    private void press(Event event) {
        canvas.forceFocus();
        pressed = event.button == 1 && !canvas.leaves(event) ? new Point(event.x, event.y) : null;
        dragged = null;
    }

    private void drag(Event event) {
        if (pressed == null || (event.stateMask & SWT.BUTTON1) == 0) {
            return;
        }
        if (dragged == null && Math.hypot(event.x - pressed.x, event.y - pressed.y) >= DRAG_PIXELS) {
            dragged = pressed;
            if (canvas.zoom().isZoomed()) {
                canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_SIZEALL));
            }
        }
        if (dragged != null) {
            canvas.zoom().pan(event.x - dragged.x, event.y - dragged.y);
            dragged = new Point(event.x, event.y);
        }
    }

    private void release(Event event) {
        if (pressed != null && dragged == null) {
            canvas.cursor().putAt(event.x, event.y);
        }
        if (dragged != null && canvas.zoom().isZoomed()) {
            canvas.setCursor(null);
        }
        pressed = null;
        dragged = null;
    }
}
