/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.problem.ProblemMarkers;

/** Checks the documents that have changed, and those that refer to them. */
public class DocumentBuilder extends IncrementalProjectBuilder {

    /** The id of the builder. */
    public static final String ID = "org.ferrule.ui.builder";

    @Override
    protected IProject[] build(int kind, Map<String, String> args, IProgressMonitor monitor) throws CoreException {
        IResourceDelta delta = kind == FULL_BUILD ? null : getDelta(getProject());
        Set<IFile> changed = delta == null ? new HashSet<>(References.documents(getProject())) : changed(delta);
        if (!changed.isEmpty()) {
            Services.get(ProblemUpdate.class).update(changed, monitor);
        }
        return new IProject[0];
    }

    private static Set<IFile> changed(IResourceDelta delta) throws CoreException {
        Set<IFile> changed = new HashSet<>();
        delta.accept(part -> {
            if (DocumentFiles.isDocument(part.getResource()) && DiskFollower.isContentChange(part)) {
                changed.add((IFile) part.getResource());
            }
            return true;
        });
        return changed;
    }

    @Override
    protected void clean(IProgressMonitor monitor) throws CoreException {
        getProject().deleteMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_INFINITE);
    }

    /** Checking reads files and takes its time: nobody has to wait for it. */
    @Override
    public ISchedulingRule getRule(int kind, Map<String, String> args) {
        return null;
    }
}
