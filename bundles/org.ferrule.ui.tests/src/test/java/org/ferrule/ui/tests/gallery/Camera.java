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

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.graphics.Rectangle;
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
        try {
            scene.show();
            take(name);
        } catch (CoreException | RuntimeException | AssertionError e) {
            failures.add(folder + "/" + name + ": " + e);
        }
    }

    /** Takes a picture of what is shown, when the jobs are done. */
    void take(String name) {
        robot.waitForJobs();
        robot.pause(UNTIL_PAINTED_MS);
        screen.take(folder + "/" + name.replaceAll("[^\\w.-]+", "-"), frame);
        taken++;
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
