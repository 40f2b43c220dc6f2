/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Widgets;

/** Works in a dialog that something is about to open, and that keeps whoever opens it until it is closed. */
final class DialogRobot {

    private static final int PAUSE_MS = 100;

    private final Display display = Display.getCurrent();
    private final Robot robot;
    private Throwable failure;
    private boolean done;

    DialogRobot(Robot robot) {
        this.robot = robot;
    }

    /** Does something in the next dialog with the title; it must close the dialog. */
    DialogRobot expect(String title, Consumer<Shell> steps) {
        display.timerExec(PAUSE_MS, new Runnable() {
            @Override
            public void run() {
                Shell shell = Stream.of(display.getShells()).filter(s -> s.isVisible() && s.getText().equals(title))
                        .findFirst().orElse(null);
                if (shell == null) {
                    display.timerExec(PAUSE_MS, this);
                } else {
                    work(shell, steps);
                }
            }
        });
        return this;
    }

    private void work(Shell shell, Consumer<Shell> steps) {
        try {
            shell.forceActive();
            // the key that has opened the dialog may still be held
            robot.key(SWT.CTRL);
            steps.accept(shell);
        } catch (AssertionError | RuntimeException e) {
            failure = e;
        } finally {
            if (!shell.isDisposed()) {
                shell.close();
            }
            done = true;
        }
    }

    /** Waits until the dialog was closed. */
    void await() {
        robot.waitFor("the end of the dialog", () -> done);
        PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().forceActive();
        robot.settle();
        if (failure != null) {
            fail(failure);
        }
    }

    /** Presses a button of the dialog by the keyboard. */
    void press(Shell shell, String text) {
        Button button = Widgets.button(shell, text);
        robot.waitFor(text + " can be pressed", button::isEnabled);
        button.setFocus();
        robot.waitFor("the focus on " + text, button::isFocusControl);
        robot.key(SWT.CR);
    }

    /** Ticks or unticks a button of the dialog by the keyboard. */
    void tick(Shell shell, String start) {
        Button button = Widgets.first(shell, Button.class, b -> b.getText().startsWith(start)).orElseThrow();
        button.setFocus();
        robot.waitFor("the focus on " + start, button::isFocusControl);
        robot.type(" ");
    }
}
