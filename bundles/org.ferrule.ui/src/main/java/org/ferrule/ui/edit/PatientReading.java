/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.document.FileReading;

/**
 * Reads a file for an editor that opens. A large one is read on a thread of its own, while the window shows that it is
 * busy and, if it takes longer, how to cancel that. To be used on the display's thread.
 */
public final class PatientReading {
    /** Smaller files take less time than a dialog. */
    private static final long LARGE_BYTES = 1_000_000;
    private static final long LOOK_AGAIN_MS = 20;

    private PatientReading() {
    }

    /**
     * Reads the file.
     *
     * @throws CoreException if it cannot be read, or with a status of {@link IStatus#CANCEL} if the user has cancelled it
     */
    public static FileReading read(IFile file) throws CoreException {
        return isLarge(file) && isIdle() ? inBackground(file.getName(), () -> FileReading.ahead(file))
                : FileReading.of(file);
    }

    private static boolean isLarge(IFile file) {
        IPath location = file.getLocation();
        return location != null && location.toFile().length() >= LARGE_BYTES;
    }

    /** While the workbench starts or closes there is no place for a dialog. */
    private static boolean isIdle() {
        IWorkbench workbench = PlatformUI.getWorkbench();
        return !workbench.isStarting() && !workbench.isClosing();
    }

    /**
     * Does something that takes long with a file.
     *
     * @param name that of the file
     * @param reading what is done; its result is dropped if the user has cancelled it
     * @throws CoreException that of the reading, or with a status of {@link IStatus#CANCEL}
     */
    public static <T> T inBackground(String name, Callable<T> reading) throws CoreException {
        FutureTask<T> task = new FutureTask<>(reading);
        try {
            PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> await(name, task, monitor));
            return task.get();
        } catch (InterruptedException | CancellationException e) {
            throw new CoreException(
                    new Status(IStatus.CANCEL, PatientReading.class, name + " was not opened: cancelled"));
        } catch (InvocationTargetException | ExecutionException e) {
            throw e.getCause() instanceof CoreException cause ? cause
                    : new CoreException(Status.error(name + " cannot be read", e.getCause()));
        }
    }

    private static void await(String name, FutureTask<?> task, IProgressMonitor monitor)
            throws InvocationTargetException, InterruptedException {
        monitor.beginTask("Reading " + name, IProgressMonitor.UNKNOWN);
        Thread thread = new Thread(task, "Reading " + name);
        thread.setDaemon(true);
        thread.start();
        while (!isDone(task)) {
            if (monitor.isCanceled()) {
                task.cancel(true);
                throw new InterruptedException();
            }
        }
        monitor.done();
    }

    private static boolean isDone(FutureTask<?> task) throws InvocationTargetException, InterruptedException {
        try {
            task.get(LOOK_AGAIN_MS, TimeUnit.MILLISECONDS);
            return true;
        } catch (TimeoutException e) {
            return false;
        } catch (ExecutionException e) {
            throw new InvocationTargetException(e.getCause());
        }
    }
}
