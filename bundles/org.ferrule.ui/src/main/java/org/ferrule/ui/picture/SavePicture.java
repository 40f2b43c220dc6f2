/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.picture;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.net.URI;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.PlatformUI;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.picture.PictureExporter;

/** Writes a picture into a file, as a whole or not at all. */
final class SavePicture {

    private final SeenPicture seen;
    private final boolean captioned;

    SavePicture(SeenPicture seen, boolean captioned) {
        this.seen = seen;
        this.captioned = captioned;
    }

    /**
     * Writes the file, away from the display's thread. If anything fails, a former file is as it was.
     *
     * @throws IOException saying what went wrong
     */
    void write(Path file, PictureExporter format) throws IOException {
        try {
            PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> run(file, format));
        } catch (InvocationTargetException e) {
            throw new IOException(said(e.getCause()), e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Names of temporary files mean nothing to people. */
    private static String said(Throwable cause) {
        return cause instanceof FileSystemException failure && failure.getReason() != null ? failure.getReason()
                : cause.getMessage();
    }

    private void run(Path file, PictureExporter format) throws InvocationTargetException {
        try {
            AtomicFiles.write(file, seen.export(format, captioned));
            refresh(file.toUri());
        } catch (IOException | CoreException | RuntimeException e) {
            throw new InvocationTargetException(e);
        }
    }

    /** The explorer shows a file that was saved into a project. */
    private static void refresh(URI written) throws CoreException {
        for (IFile file : ResourcesPlugin.getWorkspace().getRoot().findFilesForLocationURI(written)) {
            file.refreshLocal(IResource.DEPTH_ZERO, null);
        }
    }
}
