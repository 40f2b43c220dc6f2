/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;

/** Takes pictures into a folder of their theme, and remembers what could not be shown. Close it to have them all. */
final class Camera implements AutoCloseable {

    /** Shows something, or fails. */
    interface Scene {
        /** Shows it. */
        void show() throws CoreException;
    }

    private static final long MINUTES_TO_SAVE = 2;
    private static final long UNTIL_PAINTED_MS = 200;
    private static final int LOOK_MS = 100;
    private static final int LOOKS = 80;

    private final List<String> failures = new ArrayList<>();
    /** Packing a picture takes as long as taking it, and needs no display. */
    private final ExecutorService saver = Executors.newSingleThreadExecutor();
    private final ScreenPicture screen = new ScreenPicture(saver);
    private final Robot robot;
    private final Rectangle frame;
    private final String folder;
    private int taken;

    Camera(Robot robot, Rectangle frame, String folder) {
        this.frame = frame;
        this.robot = robot;
        this.folder = folder;
    }

    Robot robot() {
        return robot;
    }

    /** Takes a picture of what the scene shows, when all that it has started is done. */
    void take(String name, Scene scene) {
        attempt(name, () -> {
            scene.show();
            take(name);
        });
    }

    /** Does what is needed for a picture; what cannot be done is told in the end, and the rest goes on. */
    void attempt(String name, Scene scene) {
        try {
            scene.show();
        } catch (CoreException | RuntimeException | AssertionError e) {
            failures.add(folder + "/" + name + ": " + e);
        }
    }

    /** Takes a picture of what is shown, when the jobs are done; the pointer is out of the way, and so is its tooltip. */
    void take(String name) {
        robot.moveTo(frame.x + frame.width - 2, frame.y + frame.height - 2);
        robot.waitForJobs();
        robot.pause(UNTIL_PAINTED_MS);
        screen.take(folder + "/" + name.replaceAll("[^\\w.-]+", "-"), frame);
        taken++;
    }

    /** Opens a dialog, which may keep whoever opens it, takes its picture and closes it. */
    void takeDialog(String name, Scene opening) {
        boolean[] done = new boolean[1];
        look(name, LOOKS, done);
        attempt(name, () -> {
            opening.show();
            robot.waitFor("the dialog " + name, () -> done[0]);
        });
    }

    private void look(String name, int looks, boolean[] done) {
        Display.getCurrent().timerExec(LOOK_MS, () -> {
            if (dialogs().isEmpty() && looks > 0) {
                look(name, looks - 1, done);
            } else {
                takeAndClose(name);
                done[0] = true;
            }
        });
    }

    private void takeAndClose(String name) {
        try {
            if (dialogs().isEmpty()) {
                throw new IllegalStateException("no dialog has come up");
            }
            dialogs().forEach(this::bringInto);
            take(name);
        } catch (RuntimeException | AssertionError e) {
            failures.add(folder + "/" + name + ": " + e);
        } finally {
            dialogs().forEach(Shell::close);
        }
    }

    private static List<Shell> dialogs() {
        Shell window = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
        return Stream.of(window.getDisplay().getShells())
                .filter(shell -> shell != window && shell.isVisible() && shell.getSize().y > 1).toList();
    }

    /** Some dialogs stand in the middle of the screen, which is larger than what is taken. */
    private void bringInto(Shell dialog) {
        Rectangle bounds = dialog.getBounds();
        if (!frame.intersection(bounds).equals(bounds)) {
            Point size = dialog.getSize();
            dialog.setLocation(frame.x + (frame.width - size.x) / 2, frame.y + (frame.height - size.y) / 2);
        }
    }

    /** Returns how many pictures there are. */
    int taken() {
        return taken;
    }

    /** Returns what could not be shown, and why. */
    List<String> failures() {
        return List.copyOf(failures);
    }

    /** Waits until all pictures are on disk. */
    @Override
    public void close() {
        saver.shutdown();
        try {
            if (!saver.awaitTermination(MINUTES_TO_SAVE, TimeUnit.MINUTES)) {
                throw new IllegalStateException("the pictures cannot be saved");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
