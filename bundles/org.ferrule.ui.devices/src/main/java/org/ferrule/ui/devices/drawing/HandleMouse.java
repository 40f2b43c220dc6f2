/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.function.BooleanSupplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.ferrule.quantity.Length;
import org.ferrule.ui.picture.PictureCanvas;

/** Drags handles with the mouse. With Alt or Control held, a figure does not snap. */
final class HandleMouse {

    private final PictureCanvas canvas;
    private final HandleState state;
    private final HandlePlaces places;
    private final Runnable commit;
    private final BooleanSupplier editable;
    private boolean dragging;
    /** From where the handle was taken hold of to where it lies. */
    private Length grip = Length.ZERO;

    HandleMouse(PictureCanvas canvas, HandleState state, HandlePlaces places, BooleanSupplier editable,
            Runnable commit) {
        this.canvas = canvas;
        this.state = state;
        this.places = places;
        this.editable = editable;
        this.commit = commit;
        canvas.addListener(SWT.MouseDown, this::press);
        canvas.addListener(SWT.MouseMove, this::move);
        canvas.addListener(SWT.MouseUp, event -> release());
        canvas.addListener(SWT.MouseExit, event -> canvas.setCursor(null));
    }

    private void press(Event event) {
        if (event.button != 1 || !editable.getAsBoolean()) {
            return;
        }
        canvas.forceFocus();
        state.choose(places.at(event.x, event.y).orElse(null));
        state.chosen().ifPresent(handle -> {
            dragging = true;
            grip = handle.value().minus(places.figureAt(handle, event.x, event.y));
        });
    }

    private void move(Event event) {
        if (dragging && state.chosen().isPresent()) {
            Handle handle = state.chosen().get();
            Length wanted = places.figureAt(handle, event.x, event.y).plus(grip);
            boolean free = (event.stateMask & (SWT.ALT | SWT.CTRL)) != 0;
            state.moveTo(free ? handle.free(wanted) : handle.snapped(wanted));
        } else {
            hover(event);
        }
    }

    private void hover(Event event) {
        int shape = !editable.getAsBoolean() ? SWT.NONE : places.at(event.x, event.y)
                .map(handle -> handle.spot().isStation() ? SWT.CURSOR_SIZEWE : SWT.CURSOR_SIZENS).orElse(SWT.NONE);
        canvas.setCursor(shape == SWT.NONE ? null : canvas.getDisplay().getSystemCursor(shape));
    }

    private void release() {
        if (dragging) {
            dragging = false;
            commit.run();
        }
    }

    /** Lets go of what is being dragged. */
    void letGo() {
        dragging = false;
    }
}
