/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.HashSet;
import java.util.Set;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.ferrule.ui.Services;

/** Checks every project once when the workbench starts: what is found is not kept beyond its end, markers excepted. */
public final class FirstCheck {

    /** How long checks wait at the start, so that they do not take processors from the window that is painted. */
    static final long UNTIL_SHOWN_MS = 1_000;

    private FirstCheck() {
    }

    /** Schedules the check. */
    public static void schedule() {
        Job job = Job.create("Checking documents", (ICoreRunnable) FirstCheck::check);
        job.setPriority(Job.DECORATE);
        job.schedule(UNTIL_SHOWN_MS);
    }

    private static void check(IProgressMonitor monitor) throws CoreException {
        Set<IFile> documents = new HashSet<>();
        for (IProject project : ResourcesPlugin.getWorkspace().getRoot().getProjects()) {
            if (project.isAccessible() && project.hasNature(DocumentNature.ID)) {
                documents.addAll(References.documents(project));
            }
        }
        Services.get(ProblemUpdate.class).update(documents, monitor);
    }
}
