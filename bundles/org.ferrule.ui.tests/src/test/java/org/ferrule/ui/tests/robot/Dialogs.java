/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;

/** Works in menus, and in dialogs that keep whoever opened them waiting. To be used on the display's thread. */
public final class Dialogs {

    private static final int PAUSE_MS = 100;
    private static final int PATIENCE = 150;
    private static final int PRESSES = 5;
    private static final int PRESS_MS = 1500;

    /** What is done in a dialog. */
    @FunctionalInterface
    public interface Work {

        /** Does it; the dialog is to be closed in the end. */
        void in(Shell dialog);
    }

    private final Display display = Display.getCurrent();
    private final Robot robot;
    private AssertionError failure;

    /** Works by the hands of a robot. */
    public Dialogs(Robot robot) {
        this.robot = robot;
    }

    /**
     * Opens a dialog, and does something as soon as one with the title is there; returns when it is closed. It is opened
     * again where that had no effect: what is posted to a window that is not painted yet is lost.
     */
    public void open(Runnable opening, String title, Work work) {
        boolean[] done = new boolean[1];
        await(title, PATIENCE, shell -> {
            work.in(shell);
            done[0] = true;
        });
        opening.run();
        for (int i = 1; i < PRESSES && !done[0] && failure == null; i++) {
            for (int waited = 0; waited < PRESS_MS && !done[0] && find(title) == null; waited += PAUSE_MS) {
                robot.pause(PAUSE_MS);
            }
            if (!done[0] && failure == null && find(title) == null) {
                opening.run();
            }
        }
        robot.waitFor("the dialog " + title, () -> done[0] || failure != null);
        robot.waitFor("the dialog " + title + " closed", () -> find(title) == null);
        if (failure != null) {
            throw failure;
        }
    }

    /** Presses a button of a dialog until that closes: a press before the dialog is painted has no effect. */
    public void close(Shell dialog, Button button) {
        for (int i = 0; i < PRESSES && !dialog.isDisposed(); i++) {
            robot.click(button);
            for (int waited = 0; waited < PRESS_MS && !dialog.isDisposed(); waited += PAUSE_MS) {
                robot.pause(PAUSE_MS);
            }
        }
    }

    private void await(String title, int patience, Work work) {
        display.timerExec(PAUSE_MS, () -> {
            Shell shell = find(title);
            if (shell == null && patience > 0) {
                await(title, patience - 1, work);
            } else if (shell != null) {
                runIn(shell, work);
            }
        });
    }

    /** A failure must close the dialog, or the test would wait for ever. */
    private void runIn(Shell shell, Work work) {
        try {
            shell.forceActive();
            robot.settle();
            work.in(shell);
            if (!shell.isDisposed()) {
                fail("the dialog " + shell.getText() + " is still open");
            }
        } catch (RuntimeException | AssertionError e) {
            new ScreenPicture().take("failed-in-dialog");
            failure = e instanceof AssertionError error ? error : new AssertionError(e);
            Stream.of(display.getShells()).filter(open -> open == shell || open.getParent() == shell)
                    .forEach(Shell::close);
        }
    }

    private Shell find(String title) {
        return Stream.of(display.getShells()).filter(shell -> shell.isVisible() && shell.getText().equals(title))
                .findFirst().orElse(null);
    }

    /** Opens the menu of the control by the keyboard, again where keys got lost, and chooses the item with the mnemonic. */
    public void menu(Control control, char mnemonic) {
        for (int i = 0; i < PRESSES && !control.getMenu().isVisible(); i++) {
            robot.awake();
            control.forceFocus();
            robot.settle();
            chord(SWT.SHIFT, SWT.F10);
            for (int waited = 0; waited < PRESS_MS && !control.getMenu().isVisible(); waited += PAUSE_MS) {
                robot.pause(PAUSE_MS);
            }
        }
        robot.waitFor("the menu", () -> control.getMenu().isVisible());
        robot.pause(200);
        robot.type(String.valueOf(mnemonic));
        robot.settle();
    }

    /** Presses a key while a modifier is held. */
    public void chord(int modifier, int keyCode) {
        post(SWT.KeyDown, modifier);
        post(SWT.KeyDown, keyCode);
        post(SWT.KeyUp, keyCode);
        post(SWT.KeyUp, modifier);
        robot.settle();
    }

    private void post(int type, int keyCode) {
        Event event = new Event();
        event.type = type;
        event.keyCode = keyCode;
        display.post(event);
        robot.pause(15);
    }
}
