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
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.FormToolkit;

/** Moves the mouse, presses keys, and lets the workbench work. To be used on the display's thread, as tests run. */
public final class Robot {

    private static final Point ROOM = new Point(1274, 806);
    private static final int MODAL = SWT.APPLICATION_MODAL | SWT.PRIMARY_MODAL | SWT.SYSTEM_MODAL;
    private static final int DRAG_STEPS = 4;

    private static final long PATIENCE_MS = 20_000;
    private static final long PATIENCE_FOR_JOBS_MS = 90_000;
    private static final long PATIENCE_FOR_OTHERS_MS = 120_000;
    private static final long PAUSE_MS = 10;
    private static final int CLICKS = 4;
    private static final long PATIENCE_FOR_CLICK_MS = 5_000;

    private final Display display = Display.getCurrent();

    /**
     * Takes the keyboard for the workbench: without a window manager, as on a test display, nobody gives it back when a
     * window of an earlier test was closed. The window gets the same room before each test, since how much the toolkit
     * takes off for a frame that nobody draws is by chance (SWT 3.132 on GTK).
     */
    public Robot() {
        for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
            giveSize(window.getShell());
            window.getShell().forceActive();
        }
        settle();
    }

    private static void giveSize(Shell shell) {
        Point size = shell.getSize();
        Rectangle room = shell.getClientArea();
        shell.setBounds(0, 0, size.x + ROOM.x - room.width, size.y + ROOM.y - room.height);
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

    /** Lets the workbench work until something holds that another process does; fails after two minutes. */
    public void waitForOther(String what, BooleanSupplier condition) {
        waitFor(what, condition, PATIENCE_FOR_OTHERS_MS);
    }

    private void waitFor(String what, BooleanSupplier condition, long patienceMs) {
        await(what, condition, patienceMs);
        settle();
    }

    /** Does the same without letting the workbench work any more when the condition holds. */
    private void await(String what, BooleanSupplier condition, long patienceMs) {
        long end = System.currentTimeMillis() + patienceMs;
        while (!condition.getAsBoolean()) {
            if (System.currentTimeMillis() > end) {
                new ScreenPicture().take("waited-for-" + what.replaceAll("\\W+", "-"));
                fail("waited in vain for: " + what);
            }
            work();
        }
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
        pressUntil(what, () -> {
            if (!control.isDisposed()) {
                click(control);
            }
        }, condition);
    }

    /** Does the same with what takes more than a click into the middle of a control. */
    public void pressUntil(String what, Runnable press, BooleanSupplier condition) {
        for (int i = 0; i < CLICKS && !condition.getAsBoolean(); i++) {
            awake();
            press.run();
            long end = System.currentTimeMillis() + PATIENCE_FOR_CLICK_MS;
            while (!condition.getAsBoolean() && System.currentTimeMillis() < end) {
                work();
            }
        }
        waitFor(what, condition);
    }

    /** Scrolls until the control is in sight, also where what holds it is laid out only now. */
    public void scrollTo(Control control) {
        settle();
        waitFor("the control in sight", () -> {
            FormToolkit.ensureVisible(control);
            return Sight.holds(control, new Point(0, control.getSize().y / 2));
        });
    }

    /** Clicks at a place of the control, which may come into sight only when what holds it is laid out. */
    public void click(Control control, int x, int y) {
        settle();
        Point at = pointAt(control, new Point(x, y));
        mouse(SWT.MouseDown, 1, at);
        mouse(SWT.MouseUp, 1, at);
    }

    /**
     * Moves the pointer to a place of the control and makes sure that the control is at rest there: a posted button
     * goes to what the pointer is over then, and a page that is laid out meanwhile moves its controls away.
     */
    private Point pointAt(Control control, Point place) {
        await("the control at rest in sight", () -> {
            Sight.bring(control, place);
            Point at = control.toDisplay(place);
            mouse(SWT.MouseMove, 0, at);
            return Sight.holds(control, place) && control.toDisplay(place).equals(at);
        }, PATIENCE_MS);
        return control.toDisplay(place);
    }

    /**
     * Clicks at a place of a control that paints itself. Button events that are posted lack their place on the screen
     * (SWT 3.132 on GTK), by which such a control goes; so the pointer is moved for real and the control is told.
     */
    public void clickPainted(Control control, int x, int y) {
        clickPainted(control, x, y, SWT.NONE);
    }

    /** Clicks the same way while a modifier is held. */
    public void clickPainted(Control control, int x, int y, int modifier) {
        settle();
        mouse(SWT.MouseMove, 0, control.toDisplay(x, y));
        tell(control, SWT.MouseDown, x, y, modifier);
        tell(control, SWT.MouseUp, x, y, modifier);
        settle();
    }

    /** Drags from one place of a control that paints itself to another; see {@link #clickPainted}. */
    public void dragPainted(Control control, Point from, Point to) {
        settle();
        mouse(SWT.MouseMove, 0, control.toDisplay(from.x, from.y));
        tell(control, SWT.MouseDown, from.x, from.y, SWT.NONE);
        for (int i = 1; i <= DRAG_STEPS; i++) {
            int x = from.x + (to.x - from.x) * i / DRAG_STEPS;
            int y = from.y + (to.y - from.y) * i / DRAG_STEPS;
            Event event = new Event();
            event.x = x;
            event.y = y;
            event.stateMask = SWT.BUTTON1;
            control.notifyListeners(SWT.MouseMove, event);
            settle();
        }
        tell(control, SWT.MouseUp, to.x, to.y, SWT.NONE);
        settle();
    }

    private static void tell(Control control, int type, int x, int y, int modifier) {
        Event event = new Event();
        event.button = 1;
        event.count = 1;
        event.x = x;
        event.y = y;
        event.stateMask = modifier | (type == SWT.MouseUp ? SWT.BUTTON1 : 0);
        control.notifyListeners(type, event);
    }

    /**
     * Presses a key of a control that paints itself. Keys that are posted after a modifier was held bear the mark of a
     * mouse button (SWT 3.132 on GTK), by which such a control goes; so the control is told.
     */
    public void keyPainted(Control control, int keyCode) {
        keyPainted(control, keyCode, SWT.NONE);
    }

    /** Presses a key the same way while a modifier is held. */
    public void keyPainted(Control control, int keyCode, int modifier) {
        control.forceFocus();
        Event event = new Event();
        event.keyCode = keyCode;
        event.stateMask = modifier;
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

    /**
     * Presses the mouse at a place of a control that paints itself and moves it on with the button held. As in
     * {@link #clickPainted} the pointer is moved for real, and the control is told of what a posted event lacks.
     *
     * @param modifiers keys that are held meanwhile, or 0
     */
    public void beginDrag(Control control, Point from, Point to, int modifiers) {
        settle();
        mouse(SWT.MouseMove, 0, control.toDisplay(from));
        tell(control, SWT.MouseDown, from.x, from.y, modifiers);
        drag(control, new Point((from.x + to.x) / 2, (from.y + to.y) / 2), modifiers);
        drag(control, to, modifiers);
    }

    private void drag(Control control, Point to, int modifiers) {
        mouse(SWT.MouseMove, 0, control.toDisplay(to));
        tell(control, SWT.MouseMove, to.x, to.y, SWT.BUTTON1 | modifiers);
    }

    /** Lets the button go at a place of the control. */
    public void endDrag(Control control, Point at) {
        tell(control, SWT.MouseUp, at.x, at.y, SWT.NONE);
        settle();
    }

    /** Does something while a modifier key is held. */
    public void holding(int modifier, Runnable action) {
        key(SWT.KeyDown, modifier, '\0');
        action.run();
        key(SWT.KeyUp, modifier, '\0');
    }

    /** Moves the pointer over the middle of the control, so that a click finds it where it stands now. */
    public void moveOver(Control control) {
        Point middle = control.toDisplay(control.getSize().x / 2, control.getSize().y / 2);
        moveTo(middle.x, middle.y);
    }

    /** Moves the pointer to a place of the screen. */
    public void moveTo(int x, int y) {
        mouse(SWT.MouseMove, 0, new Point(x, y));
        settle();
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
        text.chars().forEach(character -> {
            awake();
            press((char) character);
        });
    }

    /**
     * Clicks into the field and types a text in the place of what stands there, as often as it takes until the text
     * stands there: keys get lost while another window has the keyboard, such as a tooltip that comes late.
     */
    public void replace(Text field, String text) {
        for (int i = 0; i < CLICKS && (i == 0 || !field.getText().equals(text)); i++) {
            clickUntil("the cursor in the field", field, field::isFocusControl);
            keys(SWT.MOD1, 'a');
            type(text);
            settle();
        }
        waitFor("the text " + text, () -> field.getText().equals(text));
    }

    /** Goes through a list that drops down by its arrow keys, as far as an entry. */
    public void choose(Combo list, int index) {
        list.setFocus();
        waitFor("the focus", list::isFocusControl);
        while (list.getSelectionIndex() != index) {
            int before = list.getSelectionIndex();
            pressUntil("another entry", () -> key(before < index ? SWT.ARROW_DOWN : SWT.ARROW_UP),
                    () -> list.getSelectionIndex() != before);
        }
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
        awake();
        key(SWT.KeyDown, keyCode, '\0');
        key(SWT.KeyUp, keyCode, '\0');
    }

    /** Presses a key that stands for no character while the modifier is held. */
    public void keyWith(int modifier, int keyCode) {
        awake();
        key(SWT.KeyDown, modifier, '\0');
        key(keyCode);
        key(SWT.KeyUp, modifier, '\0');
    }

    /** Presses a letter while the modifier is held. */
    public void keys(int modifier, char letter) {
        awake();
        key(SWT.KeyDown, modifier, '\0');
        key(SWT.KeyDown, 0, letter);
        key(SWT.KeyUp, 0, letter);
        key(SWT.KeyUp, modifier, '\0');
    }

    /** Lets a key go that is still held: a dialog that a key opens keeps it from being let go before the dialog closes. */
    public void letGo(int modifier) {
        key(SWT.KeyUp, modifier, '\0');
    }

    /**
     * Lets the window take keys: without a window manager none becomes active by itself when a dialog has closed, and a
     * tooltip may have become so.
     */
    void awake() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        if (window == null || isDialogOpen()) {
            return;
        }
        Shell active = display.getActiveShell();
        if (active == null || (active.getStyle() & SWT.NO_FOCUS) != 0) {
            window.getShell().forceActive();
            settle();
        }
        if (display.getFocusControl() == null && window.getActivePage().getActivePart() != null) {
            window.getActivePage().getActivePart().setFocus();
            settle();
        }
    }

    private boolean isDialogOpen() {
        return Stream.of(display.getShells()).anyMatch(shell -> shell.isVisible() && (shell.getStyle() & MODAL) != 0);
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
