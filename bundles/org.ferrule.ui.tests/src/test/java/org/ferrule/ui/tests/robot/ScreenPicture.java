/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.nio.file.Path;
import java.util.concurrent.Executor;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;

/** Keeps pictures of the screen in target/screenshots, for people to look at. */
public final class ScreenPicture {

    private static final Path FOLDER = Path.of(System.getProperty("ferrule.screenshots", "target/screenshots"));

    private final Display display = Display.getCurrent();
    private final Executor saver;

    /** Takes pictures that are on disk when they are taken. */
    public ScreenPicture() {
        this(Runnable::run);
    }

    /** Takes pictures that the executor brings to disk, on any thread. */
    public ScreenPicture(Executor saver) {
        this.saver = saver;
    }

    /** Takes a picture of the whole screen and returns its pixels. */
    public ImageData take(String name) {
        return take(name, display.getBounds());
    }

    /** Takes a picture of a part of the screen and returns its pixels. */
    public ImageData take(String name, Rectangle bounds) {
        Image image = new Image(display, bounds.width, bounds.height);
        GC gc = new GC(display);
        try {
            gc.copyArea(image, bounds.x, bounds.y);
            ImageData pixels = image.getImageData(display.getPrimaryMonitor().getZoom());
            saver.execute(() -> save(pixels, FOLDER.resolve(name + ".png")));
            return pixels;
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    private static void save(ImageData pixels, Path file) {
        file.toAbsolutePath().getParent().toFile().mkdirs();
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] { pixels };
        loader.save(file.toString(), SWT.IMAGE_PNG);
    }
}
