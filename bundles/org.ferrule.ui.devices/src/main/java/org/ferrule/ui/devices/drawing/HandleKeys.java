/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

import java.util.Optional;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.ferrule.quantity.Length;
import org.ferrule.ui.picture.PictureCanvas;

/**
 * Moves handles by keyboard: Tab goes from one to the next, arrows move it by the last printed digit, with Shift by ten
 * of these, Enter makes the change, Escape gives it up. Leaving the drawing makes the change too, as leaving a field
 * does.
 */
final class HandleKeys {

    private static final int MANY = 10;

    private final HandleState state;
    private final BooleanSupplier editable;
    private final Runnable commit;
    private final Runnable cancel;

    HandleKeys(PictureCanvas canvas, HandleState state, BooleanSupplier editable, Runnable commit, Runnable cancel) {
        this.state = state;
        this.editable = editable;
        this.commit = commit;
        this.cancel = cancel;
        canvas.addListener(SWT.KeyDown, this::press);
        canvas.addListener(SWT.Traverse, this::traverse);
        canvas.addListener(SWT.FocusOut, event -> commit.run());
    }

    private void traverse(Event event) {
        switch (event.detail) {
            case SWT.TRAVERSE_TAB_NEXT -> step(event, 1);
            case SWT.TRAVERSE_TAB_PREVIOUS -> step(event, -1);
            default -> event.doit = false;
        }
    }

    /** Behind the last handle, and before the first, the next control follows. */
    private void step(Event event, int by) {
        commit.run();
        boolean stays = editable.getAsBoolean() && state.step(by);
        event.doit = !stays;
        event.detail = stays ? SWT.TRAVERSE_NONE : event.detail;
    }

    /** Tells whether a key is for the handle that is chosen. */
    boolean takes(Event event) {
        return state.chosen().isPresent() && editable.getAsBoolean() && switch (event.keyCode) {
            case SWT.CR, SWT.KEYPAD_CR, SWT.ESC, SWT.ARROW_UP, SWT.ARROW_DOWN, SWT.ARROW_LEFT, SWT.ARROW_RIGHT -> true;
            default -> false;
        };
    }

    private void press(Event event) {
        Optional<Handle> chosen = state.chosen();
        if (!takes(event)) {
            return;
        }
        switch (event.keyCode) {
            case SWT.CR, SWT.KEYPAD_CR -> commit.run();
            case SWT.ESC -> cancel.run();
            default -> move(chosen.get(), direction(chosen.get(), event.keyCode), (event.stateMask & SWT.SHIFT) != 0);
        }
    }

    /** The tip is to the right. */
    private static int direction(Handle handle, int key) {
        int left = !handle.spot().isStation() ? 0 : handle.spot().growsDistally() ? -1 : 1;
        return switch (key) {
            case SWT.ARROW_UP -> 1;
            case SWT.ARROW_DOWN -> -1;
            case SWT.ARROW_LEFT -> left;
            case SWT.ARROW_RIGHT -> -left;
            default -> 0;
        };
    }

    private void move(Handle handle, int direction, boolean far) {
        if (direction != 0) {
            Length now = state.moved().orElse(handle.value());
            state.moveTo(handle.snapped(now.plus(handle.step().times((far ? MANY : 1) * direction))));
        }
    }
}
