/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Moves the mouse, presses keys, and lets the workbench work. To be used on the display's thread, as tests run. */
public final class Robot {

    private static final long PATIENCE_MS = 20_000;
    private static final long PATIENCE_FOR_JOBS_MS = 90_000;
    private static final long PAUSE_MS = 10;
    private static final int CLICKS = 4;
    private static final long PATIENCE_FOR_CLICK_MS = 5_000;

    private final Display display = Display.getCurrent();

    /**
     * Takes the keyboard for the workbench: without a window manager, as on a test display, nobody gives it back when a
     * window of an earlier test was closed.
     */
    public Robot() {
        for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
            window.getShell().forceActive();
        }
        settle();
    }

    /** Lets the workbench handle what is pending. */
    public void settle() {
        for (int i = 0; i < 1000 && display.readAndDispatch(); i++) {
            // until nothing is left, or something repeats itself for ever
        }
    }

    /** Lets the workbench work until the condition holds; fails after 20 seconds. */
    public void waitFor(String what, BooleanSupplier condition) {
        waitFor(what, condition, PATIENCE_MS);
    }

    private void waitFor(String what, BooleanSupplier condition, long patienceMs) {
        long end = System.currentTimeMillis() + patienceMs;
        while (!condition.getAsBoolean()) {
            if (System.currentTimeMillis() > end) {
                new ScreenPicture().take("waited-for-" + what.replaceAll("\\W+", "-"));
                fail("waited in vain for: " + what);
            }
            work();
        }
        settle();
    }

    /** Lets the workbench work for a while. */
    public void pause(long milliseconds) {
        long end = System.currentTimeMillis() + milliseconds;
        while (System.currentTimeMillis() < end) {
            work();
        }
    }

    /** Waits until no job is running that the workspace or a check has started. */
    public void waitForJobs() {
        pause(300);
        waitFor("jobs", () -> Job.getJobManager().isIdle()
                || Job.getJobManager().find(null).length == sleepingJobs(), PATIENCE_FOR_JOBS_MS);
    }

    private static long sleepingJobs() {
        return Stream.of(Job.getJobManager().find(null))
                .filter(job -> job.getState() != Job.RUNNING).count();
    }

    private void work() {
        if (!display.readAndDispatch()) {
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                fail("interrupted", e);
            }
        }
    }

    /** Clicks into the middle of the control. */
    public void click(Control control) {
        Point size = control.getSize();
        click(control, size.x / 2, size.y / 2);
    }

    /** Clicks until the condition holds: on a busy machine a posted click gets lost now and then. */
    public void clickUntil(String what, Control control, BooleanSupplier condition) {
        for (int i = 0; i < CLICKS && !condition.getAsBoolean() && !control.isDisposed(); i++) {
            click(control);
            long end = System.currentTimeMillis() + PATIENCE_FOR_CLICK_MS;
            while (!condition.getAsBoolean() && System.currentTimeMillis() < end) {
                work();
            }
        }
        waitFor(what, condition);
    }

    /** Clicks at a place of the control. */
    public void click(Control control, int x, int y) {
        settle();
        Point at = control.toDisplay(x, y);
        mouse(SWT.MouseMove, 0, at);
        mouse(SWT.MouseDown, 1, at);
        mouse(SWT.MouseUp, 1, at);
    }

    /**
     * Clicks at a place of a control that paints itself. Button events that are posted lack their place on the screen
     * (SWT 3.132 on GTK), by which such a control goes; so the pointer is moved for real and the control is told.
     */
    public void clickPainted(Control control, int x, int y) {
        settle();
        mouse(SWT.MouseMove, 0, control.toDisplay(x, y));
        tell(control, SWT.MouseDown, x, y);
        tell(control, SWT.MouseUp, x, y);
        settle();
    }

    private static void tell(Control control, int type, int x, int y) {
        Event event = new Event();
        event.button = 1;
        event.count = 1;
        event.x = x;
        event.y = y;
        event.stateMask = type == SWT.MouseUp ? SWT.BUTTON1 : 0;
        control.notifyListeners(type, event);
    }

    /**
     * Presses a key of a control that paints itself. Keys that are posted after a modifier was held bear the mark of a
     * mouse button (SWT 3.132 on GTK), by which such a control goes; so the control is told.
     */
    public void keyPainted(Control control, int keyCode) {
        control.forceFocus();
        Event event = new Event();
        event.keyCode = keyCode;
        control.notifyListeners(SWT.KeyDown, event);
        settle();
    }

    /** Clicks twice at a place of the control. */
    public void doubleClick(Control control, int x, int y) {
        click(control, x, y);
        Point at = control.toDisplay(x, y);
        mouse(SWT.MouseDown, 1, at);
        mouse(SWT.MouseUp, 1, at);
    }

    private void mouse(int type, int button, Point at) {
        Event event = new Event();
        event.type = type;
        event.button = button;
        event.x = at.x;
        event.y = at.y;
        post(event);
    }

    /** Types the text into what has the focus. */
    public void type(String text) {
        text.chars().forEach(character -> press((char) character));
    }

    private void press(char character) {
        boolean shifted = Character.isUpperCase(character);
        if (shifted) {
            key(SWT.KeyDown, SWT.SHIFT, '\0');
        }
        key(SWT.KeyDown, 0, character);
        key(SWT.KeyUp, 0, character);
        if (shifted) {
            key(SWT.KeyUp, SWT.SHIFT, '\0');
        }
    }

    /** Presses a key that stands for no character, or Enter, Escape or Tab. */
    public void key(int keyCode) {
        key(SWT.KeyDown, keyCode, '\0');
        key(SWT.KeyUp, keyCode, '\0');
    }

    /** Presses a letter while the modifier is held. */
    public void keys(int modifier, char letter) {
        key(SWT.KeyDown, modifier, '\0');
        key(SWT.KeyDown, 0, letter);
        key(SWT.KeyUp, 0, letter);
        key(SWT.KeyUp, modifier, '\0');
    }

    private void key(int type, int keyCode, char character) {
        Event event = new Event();
        event.type = type;
        event.keyCode = keyCode;
        event.character = character;
        post(event);
    }

    private void post(Event event) {
        if (!display.post(event)) {
            fail("the event could not be posted: " + event);
        }
        pause(15);
    }
}
