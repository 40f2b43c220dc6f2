/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.function.Consumer;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Reads the devices of a project in the background; a newer wish replaces an older one. */
public final class ProjectReading extends Job {

    private static final int DELAY_MS = 50;

    private final Display display;
    private final Consumer<ProjectDevices> listener;
    private volatile IProject project;

    /**
     * Creates a job that reads nothing yet.
     *
     * @param listener gets the devices, on the display's thread
     */
    public ProjectReading(Display display, Consumer<ProjectDevices> listener) {
        super("Read the devices of the project");
        setSystem(true);
        this.display = display;
        this.listener = listener;
    }

    /** Reads the devices of a project as they stand now, soon. */
    public void read(IProject wanted) {
        project = wanted;
        schedule(DELAY_MS);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            IProject wanted = project;
            ProjectDevices devices = ProjectDevices.read(wanted);
            display.asyncExec(() -> {
                if (wanted.equals(project)) {
                    listener.accept(devices);
                }
            });
            return Status.OK_STATUS;
        } catch (CoreException e) {
            return e.getStatus();
        }
    }
}
