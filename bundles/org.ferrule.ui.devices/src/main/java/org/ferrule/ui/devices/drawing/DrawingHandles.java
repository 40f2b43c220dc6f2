/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.ferrule.chart.drawing.DeviceLayout;
import org.ferrule.quantity.Length;
import org.ferrule.ui.devices.part.PartEdits;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.preferences.FigureWords;

/**
 * Lets the user edit a device in its drawing: borders of sections and diameters are dragged, or moved by keyboard. While
 * something is dragged only its outline moves; the document changes once, when it is let go.
 */
final class DrawingHandles {

    private final DocumentSession session;
    private final PictureCanvas canvas;
    private final HandleState state;
    private final HandlePlaces places;
    private final HandlePainter painter;
    private final HandleMouse mouse;
    private boolean pointed;

    DrawingHandles(DocumentSession session, PictureCanvas canvas, FigureWords figures) {
        this.session = session;
        this.canvas = canvas;
        state = new HandleState(canvas::redraw);
        places = new HandlePlaces(canvas, state);
        painter = new HandlePainter(canvas, state, places, figures);
        mouse = new HandleMouse(canvas, state, places, session::editable, this::commit);
        HandleKeys keys = new HandleKeys(canvas, state, session::editable, this::commit, this::cancel);
        canvas.leaveTo(event -> event.type == SWT.MouseDown ? isAt(event.x, event.y) : keys.takes(event));
        canvas.addListener(SWT.Paint, event -> {
            if (session.editable() && (pointed || canvas.isFocusControl())) {
                painter.paint(event.gc);
            }
        });
        canvas.addListener(SWT.MouseEnter, event -> point(true));
        canvas.addListener(SWT.MouseExit, event -> point(false));
        canvas.addListener(SWT.FocusIn, event -> begin());
        canvas.addListener(SWT.FocusOut, event -> state.choose(null));
    }

    private void point(boolean now) {
        pointed = now;
        canvas.redraw();
    }

    /** The keyboard begins at the first handle. */
    private void begin() {
        if (state.chosen().isEmpty()) {
            state.step(1);
        }
    }

    /** Takes the handles of what is drawn now. */
    void show(List<Handle> handles) {
        mouse.letGo();
        state.show(handles);
    }

    /** Takes where things lie in what is drawn now. */
    void layOut(DeviceLayout layout) {
        state.layOut(layout);
    }

    /** Tells whether there is a handle at a place of the canvas. */
    boolean isAt(int x, int y) {
        return session.editable() && places.at(x, y).isPresent();
    }

    /** What is being moved is given up, or else the handle itself let go. */
    private void cancel() {
        mouse.letGo();
        if (state.moved().isPresent()) {
            state.cancel();
        } else {
            state.choose(null);
        }
    }

    private void commit() {
        Optional<Handle> chosen = state.chosen();
        Optional<Length> moved = state.moved();
        state.cancel();
        if (chosen.isPresent() && moved.filter(length -> !length.equals(chosen.get().value())).isPresent()) {
            String name = chosen.get().name();
            new PartEdits(session).set(chosen.get().movedTo(moved.get()),
                    "Change of " + name.substring(0, 1).toLowerCase(Locale.ENGLISH) + name.substring(1));
        }
    }
}
